package changeover.web.session;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A customer's link opens their page until the day it ends or is taken back; we keep only the digest of its secret. */
@Entity
@Table(name = "customer_link")
public class CustomerLink extends Owned {

    @Column(name = "customer_id", updatable = false)
    private UUID customerId = new UUID(0, 0);

    @Column(name = "secret_digest", updatable = false)
    private byte[] secretDigest = new byte[0];

    @Column(name = "expires_on", updatable = false)
    private LocalDate expiresOn = LocalDate.EPOCH;

    @Column(name = "revoked_on")
    private @Nullable LocalDate revokedOn;

    static CustomerLink of(UUID customer, byte[] digest, LocalDate expiresOn) {
        var link = new CustomerLink();
        link.customerId = customer;
        link.secretDigest = digest.clone();
        link.expiresOn = expiresOn;
        return link;
    }

    void revoke(LocalDate day) {
        revokedOn = day;
    }

    /** Whether it still opens the page on this day. */
    public boolean opensOn(LocalDate day) {
        return revokedOn == null && day.isBefore(expiresOn);
    }

    public UUID customerId() {
        return customerId;
    }

    /** The last day on which it opens. */
    public LocalDate lastDay() {
        return expiresOn.minusDays(1);
    }
}
