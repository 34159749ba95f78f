package changeover.contracts.tenants;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Seals bytes so that they are unreadable in the database and in its copies, and open only where they belong:
 * AES-256-GCM with the installation's key, a fresh nonce in front, bound to a place.
 */
@ApplicationScoped
public class Seal {

    private static final int NONCE = 12;
    private static final int TAG_BITS = 128;
    private static final int KEY_BYTES = 32;

    private final SecretKeySpec key;
    private final SecureRandom random = new SecureRandom();

    /** @param secret 32 bytes in base 64, made once and kept beside the data */
    Seal(@ConfigProperty(name = "changeover.keys.secret") String secret) {
        byte[] bytes = Base64.getDecoder().decode(secret);
        if (bytes.length != KEY_BYTES) {
            throw new IllegalStateException("changeover.keys.secret must be 32 bytes in base 64");
        }
        key = new SecretKeySpec(bytes, "AES");
    }

    /** @param place where alone the bytes may be opened again */
    public byte[] close(byte[] open, String place) {
        byte[] nonce = new byte[NONCE];
        random.nextBytes(nonce);
        byte[] closed = cipher(Cipher.ENCRYPT_MODE, nonce, place, open, 0, open.length);
        return ByteBuffer.allocate(NONCE + closed.length).put(nonce).put(closed).array();
    }

    /** @throws IllegalStateException when they were sealed with another key, or for another place */
    public byte[] open(byte[] closed, String place) {
        if (closed.length < NONCE) {
            throw new IllegalStateException("nothing is sealed here");
        }
        byte[] nonce = new byte[NONCE];
        ByteBuffer.wrap(closed).get(nonce);
        return cipher(Cipher.DECRYPT_MODE, nonce, place, closed, NONCE, closed.length - NONCE);
    }

    private byte[] cipher(int mode, byte[] nonce, String place, byte[] bytes, int from, int length) {
        try {
            Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
            cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
            cipher.updateAAD(place.getBytes(StandardCharsets.UTF_8));
            return cipher.doFinal(bytes, from, length);
        } catch (GeneralSecurityException cause) {
            throw new IllegalStateException("the seal does not fit", cause);
        }
    }
}
