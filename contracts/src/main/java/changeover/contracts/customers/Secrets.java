package changeover.contracts.customers;

import changeover.contracts.tenants.CurrentTenant;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.UUID;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * A secret is unreadable in the database, in its copies and to any other business: AES-256-GCM, a fresh nonce each time,
 * bound to the business and the home it belongs to.
 */
@ApplicationScoped
class Secrets {

    private static final int NONCE = 12;
    private static final int TAG_BITS = 128;
    private static final byte FORMAT = 1;

    private static final SecureRandom RANDOM = new SecureRandom();

    /** 32 bytes in base 64, made by the launcher once and kept beside the data. */
    @ConfigProperty(name = "changeover.keys.secret")
    String keyInBase64;

    @Inject
    CurrentTenant current;

    byte[] hide(UUID homeId, String said) {
        byte[] nonce = new byte[NONCE];
        RANDOM.nextBytes(nonce);
        byte[] hidden = run(Cipher.ENCRYPT_MODE, homeId, nonce, said.getBytes(StandardCharsets.UTF_8));
        return ByteBuffer.allocate(1 + NONCE + hidden.length)
                .put(FORMAT)
                .put(nonce)
                .put(hidden)
                .array();
    }

    /** @throws IllegalStateException when the secret was kept under another key, or belongs elsewhere */
    String show(UUID homeId, byte[] kept) {
        var bytes = ByteBuffer.wrap(kept);
        if (kept.length < 1 + NONCE || bytes.get() != FORMAT) {
            throw new IllegalStateException("not a kept secret");
        }
        byte[] nonce = new byte[NONCE];
        bytes.get(nonce);
        byte[] hidden = new byte[bytes.remaining()];
        bytes.get(hidden);
        return new String(run(Cipher.DECRYPT_MODE, homeId, nonce, hidden), StandardCharsets.UTF_8);
    }

    private byte[] run(int mode, UUID homeId, byte[] nonce, byte[] input) {
        byte[] key = Base64.getDecoder().decode(keyInBase64);
        if (key.length != 32) {
            throw new IllegalStateException("changeover.keys.secret must be 32 bytes in base 64");
        }
        try {
            Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
            cipher.init(mode, new SecretKeySpec(key, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
            cipher.updateAAD((current.id() + "/" + homeId).getBytes(StandardCharsets.UTF_8));
            return cipher.doFinal(input);
        } catch (GeneralSecurityException cause) {
            throw new IllegalStateException("a kept secret cannot be read with this key", cause);
        }
    }
}
