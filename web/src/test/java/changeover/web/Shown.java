package changeover.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Keeps pages as they came, to be looked at. */
public final class Shown {

    private static final Path FOLDER = Path.of("target", "shown");

    private Shown() {}

    public static void keep(String name, String page) {
        try {
            Files.createDirectories(FOLDER);
            Files.writeString(FOLDER.resolve(name + ".html"), page);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
