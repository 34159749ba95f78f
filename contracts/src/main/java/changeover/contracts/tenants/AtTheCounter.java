package changeover.contracts.tenants;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;

/** When somebody of whatever business last came with a request: work that nobody waits for gives way to theirs. */
@ApplicationScoped
public class AtTheCounter {

    private static final long A_WHILE = Duration.ofSeconds(1).toNanos();

    private volatile long last = System.nanoTime() - A_WHILE;

    public void came() {
        last = System.nanoTime();
    }

    /** Whether somebody came within the last second. */
    public boolean isSomebody() {
        return System.nanoTime() - last < A_WHILE;
    }
}
