package changeover.web.session;

import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The links by which calendars read the current business's visits: made, taken back, and found by their secret. */
@ApplicationScoped
public class CalendarLinks {

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    /**
     * A new link; the answer is its secret, which is known to nobody afterwards but who receives it.
     *
     * @param language {@code en} or {@code fr}: the calendar's words
     */
    public String make(CalendarOf whose, String language) {
        String secret = LinkSecret.made();
        rows.persist(CalendarLink.of(whose, language, LinkSecret.digest(secret), today.day()));
        rows.flush();
        return secret;
    }

    /** Takes back every link to these visits; how many there were. */
    public int revoke(CalendarOf whose) {
        LocalDate day = today.day();
        List<CalendarLink> open = open(whose);
        open.forEach(link -> link.revoke(day));
        rows.flush();
        return open.size();
    }

    /** The links that open these visits, the newest first. */
    public List<CalendarLink> open(CalendarOf whose) {
        return (switch (whose) {
                    case CalendarOf.Technician(UUID person) -> asked("technicianId", person);
                    case CalendarOf.Household(UUID home) -> asked("homeId", home);
                })
                .getResultList();
    }

    private TypedQuery<CalendarLink> asked(String column, UUID id) {
        return rows.createQuery(
                        "from CalendarLink where " + column
                                + " = :id and revokedOn is null order by madeOn desc, id desc",
                        CalendarLink.class)
                .setParameter("id", id);
    }

    /** The link with this secret; empty when it is unknown here or taken back. */
    public Optional<CalendarLink> find(String secret) {
        if (!LinkSecret.isOne(secret)) {
            return Optional.empty();
        }
        return rows.createQuery(
                        "from CalendarLink where secretDigest = :digest and revokedOn is null", CalendarLink.class)
                .setParameter("digest", LinkSecret.digest(secret))
                .getResultStream()
                .findFirst();
    }
}
