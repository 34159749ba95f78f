package changeover.contracts.customers;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.List;
import java.util.UUID;

/** A key or a code of a home, kept encrypted; only {@link AccessCodes#read} says it, and writes down who asked and why. */
@Entity
@Table(name = "access_code")
class AccessCode extends Owned {

    static final List<String> KINDS = List.of("key", "code", "alarm");

    @Column(name = "home_id", updatable = false)
    private UUID homeId = new UUID(0, 0);

    private String kind = "code";
    private String label = "";
    private byte[] secret = new byte[0];
    private int position;

    static AccessCode of(UUID homeId, String kind, String label, byte[] secret, int position) {
        var code = new AccessCode();
        code.homeId = homeId;
        code.kind = kind;
        code.label = label;
        code.secret = secret.clone();
        code.position = position;
        return code;
    }

    UUID homeId() {
        return homeId;
    }

    String kind() {
        return kind;
    }

    String label() {
        return label;
    }

    byte[] secret() {
        return secret.clone();
    }
}
