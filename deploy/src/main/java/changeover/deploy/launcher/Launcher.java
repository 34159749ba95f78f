package changeover.deploy.launcher;

import java.nio.channels.FileLock;
import java.time.Instant;
import java.util.List;

/** {@code deploy/start}: brings an installation up, says so, and keeps it up until told to stop. */
public final class Launcher {
    private Launcher() {}

    public static void main(String[] words) {
        if (List.of(words).contains("--help")) {
            System.out.println(StartOptions.HELP);
            return;
        }
        Logs.quiet();
        System.exit(run(List.of(words)));
    }

    private static int run(List<String> words) {
        Instant began = Instant.ofEpochSecond(
                Long.getLong("changeover.began", Instant.now().getEpochSecond()));
        Steps steps = new Steps(System.out, began);
        try {
            StartOptions options = StartOptions.of(words);
            DataFolder folder = new DataFolder(options.data());
            folder.prepare();
            try (FileLock lock = folder.lock()) {
                Installation installation = new Installation(folder, options, steps);
                Runtime.getRuntime().addShutdownHook(new Thread(installation::stop, "stop"));
                return bringUp(installation) && lock.isValid() ? 0 : 1;
            }
        } catch (CannotStart e) {
            System.err.println(e.getMessage());
            return 1;
        } catch (Exception | LinkageError e) {
            System.err.println("Changeover did not start: " + e);
            return 1;
        }
    }

    /** @return false when it was told to stop before it was up */
    private static boolean bringUp(Installation installation) throws Exception {
        try {
            installation.start();
        } catch (Exception e) {
            if (installation.stopping()) {
                return false;
            }
            throw e;
        }
        installation.watch();
        return true;
    }
}
