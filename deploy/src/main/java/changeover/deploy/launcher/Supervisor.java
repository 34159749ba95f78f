package changeover.deploy.launcher;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Watches the parts and starts a dead one again by itself, soon at first and then with more patience. */
final class Supervisor {
    private static final Duration PACE = Duration.ofMillis(300);
    private static final Duration LONGEST = Duration.ofSeconds(30);

    private final Steps steps;
    private final List<Watch> watches = new CopyOnWriteArrayList<>();
    private volatile boolean stopping;

    Supervisor(Steps steps) {
        this.steps = steps;
    }

    /** Starts the part and watches it from then on; parts are stopped in the reverse order. */
    void start(Part part) throws Exception {
        if (stopping) {
            throw new CannotStart("Stopped while starting.");
        }
        Watch watch = new Watch(part);
        watches.add(watch);
        watch.begin();
    }

    /** Starts the part anew, with whatever it is now told. */
    void renew(Part part) {
        watches.stream().filter(watch -> watch.part.equals(part)).forEach(Watch::renew);
    }

    boolean stopping() {
        return stopping;
    }

    void stopAll() {
        stopping = true;
        List<Watch> reversed = new ArrayList<>(watches).reversed();
        reversed.forEach(watch -> watch.thread.interrupt());
        reversed.forEach(Watch::end);
    }

    private final class Watch {
        private final Part part;
        private final Thread thread;

        Watch(Part part) {
            this.part = part;
            this.thread =
                    Thread.ofPlatform().daemon().name("watch " + part.name()).unstarted(this::watch);
        }

        void begin() throws Exception {
            part.start();
            thread.start();
        }

        private void watch() {
            Duration pause = Duration.ofSeconds(1);
            while (!stopping) {
                Waiting.pause(PACE);
                if (!stopping && !part.alive()) {
                    pause = revive(pause);
                }
            }
        }

        /** @return how long to wait before the next try */
        private Duration revive(Duration pause) {
            steps.happened(part.name() + " died; starting it again");
            long from = System.nanoTime();
            if (tryStart()) {
                steps.happened(part.name() + " is back after "
                        + Duration.ofNanos(System.nanoTime() - from).toSeconds() + " s");
                return Duration.ofSeconds(1);
            }
            Waiting.pause(pause);
            Duration next = pause.multipliedBy(2);
            return next.compareTo(LONGEST) > 0 ? LONGEST : next;
        }

        private synchronized boolean tryStart() {
            if (stopping) {
                return false;
            }
            try {
                part.start();
                return true;
            } catch (Exception e) {
                if (!stopping) {
                    steps.happened(part.name() + " did not start: " + e.getMessage());
                    part.stop();
                }
                return false;
            }
        }

        synchronized void renew() {
            part.stop();
            tryStart();
        }

        /** Stops without waiting for a start that is under way: the part's process is ended, and so is that start. */
        void end() {
            part.stop();
        }
    }
}
