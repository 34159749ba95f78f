package changeover.web.session;

import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The links of the current business's customers: made, taken back, and found by their secret. */
@ApplicationScoped
public class CustomerLinks {

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    /** A new link for a year; the answer is its secret, which is known to nobody afterwards but who receives it. */
    public String make(UUID customer) {
        String secret = LinkSecret.made();
        rows.persist(
                CustomerLink.of(customer, LinkSecret.digest(secret), today.day().plusYears(1)));
        rows.flush();
        return secret;
    }

    /** Takes back every link of the customer that still opens; how many there were. */
    public int revoke(UUID customer) {
        LocalDate day = today.day();
        List<CustomerLink> open = open(customer);
        open.forEach(link -> link.revoke(day));
        rows.flush();
        return open.size();
    }

    /** The links of the customer that open today, the one that lasts longest first. */
    public List<CustomerLink> open(UUID customer) {
        return rows.createQuery("""
                        from CustomerLink where customerId = :customer and revokedOn is null and expiresOn > :day
                        order by expiresOn desc, id
                        """, CustomerLink.class)
                .setParameter("customer", customer)
                .setParameter("day", today.day())
                .getResultList();
    }

    /** Whose secret this is; empty when it is unknown here, over, or taken back. */
    public Optional<UUID> find(String secret) {
        if (!LinkSecret.isOne(secret)) {
            return Optional.empty();
        }
        return rows.createQuery("from CustomerLink where secretDigest = :digest", CustomerLink.class)
                .setParameter("digest", LinkSecret.digest(secret))
                .getResultStream()
                .filter(link -> link.opensOn(today.day()))
                .map(CustomerLink::customerId)
                .findFirst();
    }
}
