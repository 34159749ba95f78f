package changeover.contracts.tenants;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The people of the current business. */
@ApplicationScoped
public class People {

    @Inject
    EntityManager rows;

    public Membership add(Membership membership) {
        rows.persist(membership);
        rows.flush();
        return membership;
    }

    /** Asks somebody with a sign-in of their own; again, when they said no before. Refused for who belongs here. */
    public Membership ask(Membership asked) {
        Optional<Membership> before =
                of(asked.personId()).filter(member -> member.declinedOn().isPresent());
        before.ifPresent(member -> member.askAgain(asked));
        rows.flush();
        return before.orElseGet(() -> add(asked));
    }

    public Ticket add(Ticket ticket) {
        rows.persist(ticket);
        rows.flush();
        return ticket;
    }

    /** Somebody holds a ticket; a card of the same kind that they held before gives way to it. */
    public Ticket hold(UUID personId, String kind, @Nullable String number, @Nullable LocalDate expiresOn) {
        Optional<Ticket> before = ticketsOf(personId).stream()
                .filter(ticket -> ticket.kind().equals(kind))
                .findFirst();
        before.ifPresent(ticket -> ticket.renew(number, expiresOn));
        rows.flush();
        return before.orElseGet(() -> add(Ticket.of(personId, kind, number, expiresOn)));
    }

    /** The tickets of whoever works here that are over or will be soon, the first to end first. */
    public List<Ticket> ticketsRunningOut(LocalDate day) {
        return rows.createQuery("""
                        from Ticket t where t.expiresOn <= :last and exists (
                          from Membership m where m.personId = t.personId and (m.untilDay is null or m.untilDay >= :day))
                        order by t.expiresOn, t.personId, t.kind""", Ticket.class)
                .setParameter("day", day)
                .setParameter("last", day.plusDays(Ticket.SPOKEN_OF_DAYS))
                .getResultList();
    }

    /** What was rewritten is stored now, so that its edition is the new one. */
    public void keep() {
        rows.flush();
    }

    public List<Membership> all() {
        return rows.createQuery("from Membership order by name", Membership.class)
                .getResultList();
    }

    public List<Membership> technicians(LocalDate day) {
        return rows.createQuery(
                        "from Membership where role = 'technician' and (untilDay is null or untilDay >= :day)"
                                + " and (askedOn is null or joinedOn is not null) order by name",
                        Membership.class)
                .setParameter("day", day)
                .getResultList();
    }

    public Optional<Membership> of(UUID personId) {
        return rows.createQuery("from Membership where personId = :person", Membership.class)
                .setParameter("person", personId)
                .getResultStream()
                .findFirst();
    }

    public List<Ticket> tickets() {
        return rows.createQuery("from Ticket order by personId, kind", Ticket.class)
                .getResultList();
    }

    public List<Ticket> ticketsOf(UUID personId) {
        return rows.createQuery("from Ticket where personId = :person order by kind", Ticket.class)
                .setParameter("person", personId)
                .getResultList();
    }
}
