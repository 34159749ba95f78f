package changeover.deploy.launcher;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Properties;

/** A file that only its owner reads, replaced whole or not at all. */
public final class PrivateFile {
    private PrivateFile() {}

    public static void write(Path file, byte[] content) {
        try {
            Path draft = file.resolveSibling(file.getFileName() + ".new");
            Files.deleteIfExists(draft);
            Files.createFile(draft, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            Files.write(draft, content);
            Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + file, e);
        }
    }

    public static void write(Path file, Properties properties) {
        StringWriter text = new StringWriter();
        properties.stringPropertyNames().stream()
                .sorted()
                .forEach(name -> text.append(name)
                        .append('=')
                        .append(escaped(properties.getProperty(name)))
                        .append('\n'));
        write(file, text.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** The properties in the file; none when there is no file. */
    public static Properties read(Path file) {
        Properties properties = new Properties();
        if (Files.exists(file)) {
            try (Reader reader = Files.newBufferedReader(file)) {
                properties.load(reader);
            } catch (IOException e) {
                throw new UncheckedIOException("cannot read " + file, e);
            }
        }
        return properties;
    }

    private static String escaped(String value) {
        return value.replace("\\", "\\\\").replace("\n", "\\n");
    }
}
