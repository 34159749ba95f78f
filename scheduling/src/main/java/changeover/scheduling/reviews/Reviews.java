package changeover.scheduling.reviews;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The closures of the current business that wait until somebody looks them over and says yes. */
@ApplicationScoped
public class Reviews {

    private static final String FROM = """
            select r.id, r.visit_id, c.home_id, concat_ws(', ', h.street, h.unit_label, h.city) as home, c.technician_id,
                   coalesce(m.name, '') as technician, c.day, c.version, c.minutes, c.minutes_planned, g.level, u.kind,
                   coalesce(n.name, '') as looked_by, a.day as looked_on, a.words
              from review_hold r
              join review_rule u on (u.tenant_id, u.id) = (r.tenant_id, r.rule_id)
              join closure c on (c.tenant_id, c.visit_id) = (r.tenant_id, r.visit_id)
              join home h on (h.tenant_id, h.id) = (c.tenant_id, c.home_id)
              left join membership m on (m.tenant_id, m.person_id) = (c.tenant_id, c.technician_id)
              left join lateral (
                select f.level from finding f where (f.tenant_id, f.visit_id) = (r.tenant_id, r.visit_id)
                 order by array_position(array['do_not_use', 'urgent', 'recommended', 'information'], f.level) limit 1) g on true
              left join review_answer a on (a.tenant_id, a.hold_id) = (r.tenant_id, r.id)
              left join membership n on (n.tenant_id, n.person_id) = (a.tenant_id, a.person_id)
             where r.tenant_id = current_tenant()
            """;

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    @Inject
    Event<ClosureReviewed> reviewed;

    /** Whether the visit's report and draft wait. */
    public boolean isHeld(UUID visit) {
        return !heldAmong(Set.of(visit)).isEmpty();
    }

    /** Of these visits those whose report and draft wait. */
    @SuppressWarnings("unchecked")
    public Set<UUID> heldAmong(Collection<UUID> visits) {
        if (visits.isEmpty()) {
            return Set.of();
        }
        List<UUID> held = rows.createNativeQuery(
                        "select r.visit_id from review_hold r where r.tenant_id = current_tenant() and r.visit_id in (:visits)"
                                + " and not exists (select from review_answer a"
                                + " where (a.tenant_id, a.hold_id) = (r.tenant_id, r.id))",
                        UUID.class)
                .setParameter("visits", visits)
                .getResultList();
        return Set.copyOf(held);
    }

    /** The visits to a home whose report and draft wait. */
    @SuppressWarnings("unchecked")
    public Set<UUID> heldIn(UUID home) {
        List<UUID> held = rows.createNativeQuery("""
                        select r.visit_id from review_hold r
                          join closure c on (c.tenant_id, c.visit_id) = (r.tenant_id, r.visit_id)
                         where r.tenant_id = current_tenant() and c.home_id = :home
                           and not exists (select from review_answer a where (a.tenant_id, a.hold_id) = (r.tenant_id, r.id))
                        """, UUID.class)
                .setParameter("home", home)
                .getResultList();
        return Set.copyOf(held);
    }

    /** Those that wait, the oldest first. */
    public List<HeldClosure> waiting() {
        return read(ask(" and a.id is null order by r.at, r.id"));
    }

    /** Those that were looked over, the newest first. */
    public List<HeldClosure> over(int from, int count) {
        return read(ask(" and a.id is not null order by a.at desc, r.id desc")
                .setFirstResult(from)
                .setMaxResults(count));
    }

    public Optional<HeldClosure> find(UUID id) {
        return read(ask(" and r.id = :id").setParameter("id", id)).stream().findFirst();
    }

    /** The last time that it waited. */
    public Optional<HeldClosure> ofVisit(UUID visit) {
        return read(ask(" and r.visit_id = :visit order by r.version desc").setParameter("visit", visit)).stream()
                .findFirst();
    }

    /**
     * Somebody other than who closed it says yes: report and draft may leave.
     *
     * @param version of the closure that was looked at; another by now is looked at again
     */
    public void approve(UUID id, int version, @Nullable String words, UUID by) {
        HeldClosure held =
                find(id).orElseThrow(() -> Refusal.of("review.unknown").thrown());
        if (!held.waits()) {
            throw Refusal.of("constraint.a_closure_is_looked_over_once").thrown();
        }
        if (held.version() != version) {
            throw Refusal.of("changed-meanwhile").thrown();
        }
        if (held.technicianId().equals(by)) {
            throw Refusal.of("review.by-another").thrown();
        }
        var checks = new Checks();
        String said = checks.note("words", words);
        checks.orRefuse();
        rows.createNativeQuery("insert into review_answer (hold_id, person_id, day, at, words)"
                        + " values (:hold, :person, :day, :at, cast(:words as text))")
                .setParameter("hold", id)
                .setParameter("person", by)
                .setParameter("day", today.day())
                .setParameter("at", today.now())
                .setParameter("words", said)
                .executeUpdate();
        reviewed.fire(new ClosureReviewed(held.visitId(), held.homeId(), held.day(), held.version()));
    }

    private Query ask(String rest) {
        return rows.createNativeQuery(FROM + rest, Tuple.class);
    }

    @SuppressWarnings("unchecked")
    private static List<HeldClosure> read(Query ask) {
        List<Tuple> found = ask.getResultList();
        return found.stream().map(Reviews::row).toList();
    }

    private static HeldClosure row(Tuple row) {
        LocalDate looked = row.get("looked_on", LocalDate.class);
        return new HeldClosure(
                row.get("id", UUID.class),
                row.get("visit_id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("technician_id", UUID.class),
                row.get("technician", String.class),
                row.get("day", LocalDate.class),
                row.get("version", Integer.class),
                row.get("minutes", Integer.class),
                row.get("minutes_planned", Integer.class),
                row.get("level", String.class),
                ReviewKind.of(row.get("kind", String.class)),
                looked == null
                        ? null
                        : new HeldClosure.Answer(
                                row.get("looked_by", String.class), looked, row.get("words", String.class)));
    }
}
