package changeover.web.session;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.ByteBuffer;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Seals bytes that rest outside any business's rows: AES-GCM with the installation's key, a fresh nonce in front. */
@ApplicationScoped
class Seal {

    private static final int NONCE = 12;
    private static final int TAG_BITS = 128;

    private final SecretKeySpec key;
    private final SecureRandom random = new SecureRandom();

    Seal(@ConfigProperty(name = "changeover.keys.secret") String secret) {
        key = new SecretKeySpec(Base64.getDecoder().decode(secret), "AES");
    }

    byte[] close(byte[] open) {
        byte[] nonce = new byte[NONCE];
        random.nextBytes(nonce);
        byte[] closed = cipher(Cipher.ENCRYPT_MODE, nonce, open, 0, open.length);
        return ByteBuffer.allocate(NONCE + closed.length).put(nonce).put(closed).array();
    }

    /** @throws IllegalStateException when the bytes were not sealed with this installation's key */
    byte[] open(byte[] closed) {
        byte[] nonce = new byte[NONCE];
        ByteBuffer.wrap(closed).get(nonce);
        return cipher(Cipher.DECRYPT_MODE, nonce, closed, NONCE, closed.length - NONCE);
    }

    private byte[] cipher(int mode, byte[] nonce, byte[] bytes, int from, int length) {
        try {
            Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
            cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
            return cipher.doFinal(bytes, from, length);
        } catch (GeneralSecurityException cause) {
            throw new IllegalStateException("the seal does not fit", cause);
        }
    }
}
