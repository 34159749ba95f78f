package changeover.deploy.launcher;

import java.io.PrintStream;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.Callable;

/** Tells the person what is going on: one line with its seconds for each long step. */
final class Steps {
    private final PrintStream out;
    private final Instant began;

    Steps(PrintStream out, Instant began) {
        this.out = out;
        this.began = began;
    }

    /** Runs the step and says how long it took. */
    <T> T take(String done, Callable<T> step) throws Exception {
        long from = System.nanoTime();
        T result = step.call();
        line("%6d s  %s".formatted(Duration.ofNanos(System.nanoTime() - from).toSeconds(), done));
        return result;
    }

    void happened(String what) {
        line("%s  %s".formatted(LocalTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.SECONDS), what));
    }

    synchronized void line(String text) {
        out.println(text);
        out.flush();
    }

    long seconds() {
        return Duration.between(began, Instant.now()).toSeconds();
    }
}
