package changeover.scheduling.reviews;

import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.tenants.Today;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import changeover.scheduling.dayplan.SecondHand;
import changeover.scheduling.dayplan.SecondHands;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** A closure begins to wait by the first rule that holds it; a closure that went out already, by something grave that was added. */
@ApplicationScoped
class ReviewHolds {

    private static final int AS_CLOSED = 1;

    @Inject
    EntityManager rows;

    @Inject
    ReviewRules rules;

    @Inject
    Reviews reviews;

    @Inject
    SecondHands seconds;

    @Inject
    Today today;

    void look(VisitClosed closed) {
        begin(closed, AS_CLOSED, closed.day(), () -> gravestOf(closed.visitId()), _ -> true);
    }

    /** What is graver than before, or beside it, is looked over although the rest was; what waits already goes on waiting. */
    void look(VisitAmended amended) {
        VisitClosed now = amended.now();
        if (!reviews.isHeld(now.visitId())) {
            begin(
                    now,
                    amended.version(),
                    today.day(),
                    () -> gravestSaid(amended.amendmentId()),
                    rule -> rule.rule().kind() == ReviewKind.SEVERITY);
        }
    }

    /** Asked only where a rule stands at all. */
    private interface Gravest {
        @Nullable
        FindingLevel found();
    }

    private void begin(VisitClosed closed, int version, LocalDate day, Gravest gravest, Predicate<KnownRule> asked) {
        List<KnownRule> standing = rules.standing().stream().filter(asked).toList();
        if (standing.isEmpty()) {
            return;
        }
        if (isAPartners(closed.visitId())) {
            standing = standing.stream()
                    .filter(rule -> rule.rule().kind() == ReviewKind.SEVERITY)
                    .toList();
        }
        var facts = new ReviewRule.Closed(
                closed.technicianId(),
                seconds.of(closed.visitId()).map(SecondHand::technicianId).orElse(null),
                gravest.found(),
                closuresOf(closed.technicianId()),
                day);
        standing.stream()
                .filter(rule -> rule.rule().holds(facts))
                .findFirst()
                .ifPresent(
                        rule -> rows.createNativeQuery("insert into review_hold (visit_id, rule_id, day, at, version)"
                                        + " values (:visit, :rule, :day, :at, :version)")
                                .setParameter("visit", closed.visitId())
                                .setParameter("rule", rule.id())
                                .setParameter("day", day)
                                .setParameter("at", today.now())
                                .setParameter("version", version)
                                .executeUpdate());
    }

    private @Nullable FindingLevel gravestOf(UUID visit) {
        return gravest(
                "select distinct f.level from finding f where f.tenant_id = current_tenant() and f.visit_id = :of",
                visit);
    }

    /** A finding carries the id of the operation that said it. */
    private @Nullable FindingLevel gravestSaid(UUID amendment) {
        return gravest("""
                select distinct f.level from finding f
                  join operation o on (o.tenant_id, o.id) = (f.tenant_id, f.id)
                 where f.tenant_id = current_tenant() and o.amendment_id = :of""", amendment);
    }

    @SuppressWarnings("unchecked")
    private @Nullable FindingLevel gravest(String sql, UUID of) {
        List<String> levels = rows.createNativeQuery(sql).setParameter("of", of).getResultList();
        return levels.stream()
                .map(FindingLevel::ofCode)
                .max(Comparator.naturalOrder())
                .orElse(null);
    }

    /** Whoever writes down what a partner did did not do it: nothing that is asked of technicians is asked of them. */
    private boolean isAPartners(UUID visit) {
        return !rows.createNativeQuery("select 1 from partner_visit_done where visit_id = :visit", Object.class)
                .setParameter("visit", visit)
                .getResultList()
                .isEmpty();
    }

    private int closuresOf(UUID technician) {
        return ((Number) rows.createNativeQuery("""
                        select count(*) from closure c where c.technician_id = :technician and not exists (
                          select 1 from partner_visit_done d where (d.tenant_id, d.visit_id) = (c.tenant_id, c.visit_id))""")
                        .setParameter("technician", technician)
                        .getSingleResult())
                .intValue();
    }
}
