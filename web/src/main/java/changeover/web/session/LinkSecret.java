package changeover.web.session;

import changeover.contracts.digests.Sha256;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.regex.Pattern;

/** What opens a link: 32 random bytes that its holder alone knows. We keep only the digest. */
final class LinkSecret {

    private static final int BYTES = 32;
    private static final Pattern SECRET = Pattern.compile("[A-Za-z0-9_-]{43}");
    private static final SecureRandom RANDOM = new SecureRandom();

    private LinkSecret() {}

    static String made() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Whether it could be one; what could not is looked up nowhere. */
    static boolean isOne(String secret) {
        return SECRET.matcher(secret).matches();
    }

    static byte[] digest(String secret) {
        return Sha256.of(secret);
    }
}
