package changeover.deploy.launcher;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Properties;

/** The folder that holds everything of one installation: data, passwords, the programs made ready, logs. */
final class DataFolder {
    /** What this version writes; a folder with a higher number belongs to a newer one. */
    static final int FORMAT = 1;

    private static final long FIRST_START_BYTES = 2L << 30;
    private static final long LATER_START_BYTES = 256L << 20;

    private final Path root;

    DataFolder(Path root) {
        this.root = root;
    }

    Path root() {
        return root;
    }

    Path postgres() {
        return root.resolve("postgres");
    }

    Path keycloak() {
        return root.resolve("keycloak");
    }

    Path application() {
        return root.resolve("app");
    }

    Path run() {
        return root.resolve("run");
    }

    Path log(String part) {
        return root.resolve("log").resolve(part + ".log");
    }

    Path secrets() {
        return root.resolve("secrets.properties");
    }

    private Path settingsFile() {
        return root.resolve("installation.properties");
    }

    Properties settings() {
        return PrivateFile.read(settingsFile());
    }

    synchronized void remember(String name, String value) {
        Properties settings = settings();
        settings.setProperty(name, value);
        PrivateFile.write(settingsFile(), settings);
    }

    /** @throws CannotStart when the folder cannot be used */
    void prepare() {
        try {
            Files.createDirectories(
                    root, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
            Files.createDirectories(run());
            Files.createDirectories(root.resolve("log"));
            Files.delete(Files.createTempFile(root, "writable", null));
        } catch (IOException e) {
            throw new CannotStart("The folder " + root + " cannot be written; give another with --data.", e);
        }
        checkFormat();
        checkSpace();
    }

    private void checkFormat() {
        int format = Integer.parseInt(settings().getProperty("format", Integer.toString(FORMAT)));
        if (format > FORMAT) {
            throw new CannotStart("The data in " + root
                    + " were written by a newer Changeover; start that one, this one would harm them.");
        }
    }

    private void checkSpace() {
        long needed = settings().containsKey("ready") ? LATER_START_BYTES : FIRST_START_BYTES;
        try {
            long free = Files.getFileStore(root).getUsableSpace();
            if (free < needed) {
                throw new CannotStart("Too little space under %s: %d MiB are free, %d MiB are needed."
                        .formatted(root, free >> 20, needed >> 20));
            }
        } catch (IOException e) {
            throw new CannotStart("The space under " + root + " cannot be told.", e);
        }
    }

    /** Holds the folder for this process until it ends, however it ends. */
    FileLock lock() {
        Path file = run().resolve("launcher.lock");
        try {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = channel.tryLock();
            if (lock == null) {
                channel.close();
                throw new CannotStart(
                        "Changeover already runs on " + root + "; stop it first, or give another folder with --data.");
            }
            return lock;
        } catch (IOException e) {
            throw new CannotStart("The folder " + root + " cannot be locked.", e);
        }
    }
}
