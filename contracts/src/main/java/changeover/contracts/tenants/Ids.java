package changeover.contracts.tenants;

import java.security.SecureRandom;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Ids made before a row is stored: version 7 of RFC 9562, so that rows stored together stand together. Ids made here are
 * in order, also within one millisecond. They are names, not secrets.
 */
public final class Ids {

    private static final long VERSION = 0x7000L;
    private static final long VARIANT = 0x8000000000000000L;
    private static final long LOW_62 = 0x3fffffffffffffffL;

    /** Milliseconds in the upper bits, a count of 4,096 to the millisecond in the lower twelve. */
    private static final AtomicLong LAST = new AtomicLong();

    private static final ThreadLocal<SplittableRandom> RANDOM =
            ThreadLocal.withInitial(() -> new SplittableRandom(new SecureRandom().nextLong()));

    private Ids() {}

    public static UUID next() {
        long now = System.currentTimeMillis() << 12;
        long tick = LAST.updateAndGet(last -> Math.max(last + 1, now));
        long high = (tick >>> 12) << 16 | VERSION | (tick & 0xfff);
        return new UUID(high, RANDOM.get().nextLong() & LOW_62 | VARIANT);
    }
}
