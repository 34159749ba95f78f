package changeover.web.session;

import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

/** The links of the current business's customers: made, taken back, and found by their secret. */
@ApplicationScoped
public class CustomerLinks {

    private static final int BYTES = 32;
    private static final Pattern SECRET = Pattern.compile("[A-Za-z0-9_-]{43}");

    private final SecureRandom random = new SecureRandom();

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    /** A new link for a year; the answer is its secret, which is known to nobody afterwards but who receives it. */
    public String make(UUID customer) {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        String secret = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        rows.persist(CustomerLink.of(customer, digest(secret), today.day().plusYears(1)));
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
        if (!SECRET.matcher(secret).matches()) {
            return Optional.empty();
        }
        return rows.createQuery("from CustomerLink where secretDigest = :digest", CustomerLink.class)
                .setParameter("digest", digest(secret))
                .getResultStream()
                .filter(link -> link.opensOn(today.day()))
                .map(CustomerLink::customerId)
                .findFirst();
    }

    private static byte[] digest(String secret) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.US_ASCII));
        } catch (NoSuchAlgorithmException cause) {
            throw new IllegalStateException("every Java has SHA-256", cause);
        }
    }
}
