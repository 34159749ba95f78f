package changeover.deploy.launcher;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Properties;

/** The passwords and keys of one installation: made once, kept where only its owner reads, never printed. */
final class Secrets {
    private static final SecureRandom RANDOM = new SecureRandom();

    private final Path file;
    private final Properties known;

    Secrets(Path file) {
        this.file = file;
        this.known = PrivateFile.read(file);
    }

    /** A password of 32 letters, digits, - and _ for the given use; the same one each time. */
    String password(String use) {
        return kept(use, () -> Base64.getUrlEncoder().withoutPadding().encodeToString(random(24)));
    }

    /** A key of 32 bytes, as base64. */
    String key(String use) {
        return kept(use, () -> Base64.getEncoder().encodeToString(random(32)));
    }

    synchronized String kept(String use, java.util.function.Supplier<String> make) {
        String value = known.getProperty(use);
        if (value == null) {
            value = make.get();
            known.setProperty(use, value);
            PrivateFile.write(file, known);
        }
        return value;
    }

    private static byte[] random(int length) {
        byte[] bytes = new byte[length];
        RANDOM.nextBytes(bytes);
        return bytes;
    }
}
