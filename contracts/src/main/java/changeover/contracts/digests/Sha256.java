package changeover.contracts.digests;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), which every Java has: 32 bytes. */
public final class Sha256 {

    private Sha256() {}

    /** For bytes that come little by little. */
    public static MessageDigest begun() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException cause) {
            throw new IllegalStateException("every Java has SHA-256", cause);
        }
    }

    public static byte[] of(byte[] bytes) {
        return begun().digest(bytes);
    }

    /** Of the text's UTF-8. */
    public static byte[] of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Of the text's UTF-8, in 64 small hexadecimal letters. */
    public static String hex(String text) {
        return HexFormat.of().formatHex(of(text));
    }

    /** In 64 small hexadecimal letters. */
    public static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(of(bytes));
    }
}
