package changeover.contracts.customers;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Seal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.UUID;

/** A secret of a home is sealed for that business and that home; a format byte in front lets the seal change one day. */
@ApplicationScoped
class Secrets {

    private static final byte FORMAT = 1;

    @Inject
    CurrentTenant current;

    @Inject
    Seal seal;

    byte[] hide(UUID homeId, String said) {
        byte[] sealed = seal.close(said.getBytes(StandardCharsets.UTF_8), place(homeId));
        return ByteBuffer.allocate(1 + sealed.length).put(FORMAT).put(sealed).array();
    }

    /** @throws IllegalStateException when the secret was kept under another key, or belongs elsewhere */
    String show(UUID homeId, byte[] kept) {
        if (kept.length == 0 || kept[0] != FORMAT) {
            throw new IllegalStateException("not a kept secret");
        }
        return new String(seal.open(Arrays.copyOfRange(kept, 1, kept.length), place(homeId)), StandardCharsets.UTF_8);
    }

    private String place(UUID homeId) {
        return current.id() + "/" + homeId;
    }
}
