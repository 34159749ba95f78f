package changeover.deploy.launcher;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** Waits for something outside this process, never longer than told. */
final class Waiting {
    private static final Duration PACE = Duration.ofMillis(200);

    private Waiting() {}

    /** Returns whether it became so within the time. */
    static boolean until(Duration atMost, BooleanSupplier so) {
        long end = System.nanoTime() + atMost.toNanos();
        while (!so.getAsBoolean()) {
            if (System.nanoTime() >= end || Thread.currentThread().isInterrupted()) {
                return false;
            }
            pause(PACE);
        }
        return true;
    }

    static void pause(Duration duration) {
        long end = System.nanoTime() + duration.toNanos();
        while (System.nanoTime() < end && !Thread.currentThread().isInterrupted()) {
            LockSupport.parkNanos(end - System.nanoTime());
        }
    }
}
