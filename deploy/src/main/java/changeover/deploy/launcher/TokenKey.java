package changeover.deploy.launcher;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Base64;

/**
 * The installation's own key for the bearer tokens of {@code deploy/admin token}: the application trusts its public half as a second issuer for the API.
 * Keycloak's sign-in knows nothing of it, so nothing about passwords becomes weaker.
 */
public final class TokenKey {
    /** What such a token names as its issuer. */
    public static final String ISSUER = "changeover-admin";

    private TokenKey() {}

    /** A new RSA pair: the private half, a colon, the public half, both base64. */
    static String make() {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
            generator.initialize(2048);
            KeyPair pair = generator.generateKeyPair();
            Base64.Encoder encoder = Base64.getEncoder();
            return encoder.encodeToString(pair.getPrivate().getEncoded()) + ":"
                    + encoder.encodeToString(pair.getPublic().getEncoded());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    static String publicHalf(String pair) {
        return pair.substring(pair.indexOf(':') + 1);
    }

    static String privateHalf(String pair) {
        return pair.substring(0, pair.indexOf(':'));
    }

    /** Signs the claims (a JSON object) as a compact token. */
    public static String sign(String privateHalf, String claims) {
        try {
            Base64.Encoder encoder = Base64.getUrlEncoder().withoutPadding();
            String header =
                    encoder.encodeToString("{\"alg\":\"RS256\",\"typ\":\"JWT\"}".getBytes(StandardCharsets.UTF_8));
            String content = header + "." + encoder.encodeToString(claims.getBytes(StandardCharsets.UTF_8));
            Signature signature = Signature.getInstance("SHA256withRSA");
            signature.initSign(KeyFactory.getInstance("RSA")
                    .generatePrivate(new PKCS8EncodedKeySpec(Base64.getDecoder().decode(privateHalf))));
            signature.update(content.getBytes(StandardCharsets.UTF_8));
            return content + "." + encoder.encodeToString(signature.sign());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }
}
