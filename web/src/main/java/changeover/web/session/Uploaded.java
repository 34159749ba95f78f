package changeover.web.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;

/** A file that came with a form. */
public final class Uploaded {

    private Uploaded() {}

    /** What it was called where it came from; empty when no file was chosen. */
    public static String name(@Nullable FileUpload file) {
        return file == null || file.fileName() == null ? "" : file.fileName();
    }

    /** Its bytes; none when no file was chosen. */
    public static byte[] bytes(@Nullable FileUpload file) {
        if (file == null) {
            return new byte[0];
        }
        try {
            return Files.readAllBytes(file.uploadedFile());
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
