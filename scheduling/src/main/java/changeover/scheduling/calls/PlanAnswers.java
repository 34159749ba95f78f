package changeover.scheduling.calls;

import changeover.contracts.calendar.Window;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Roster;
import changeover.scheduling.dayplan.Rosters;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The answer times of the current business's plans: dated, the newest counts, an agreement keeps the one that it was sold with. */
@ApplicationScoped
public class PlanAnswers {

    private static final int A_YEAR = 370;

    @Inject
    EntityManager rows;

    @Inject
    Plans plans;

    @Inject
    Rosters rosters;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /** What the plan says today; empty where it says nothing. */
    public Optional<PlanAnswer> of(UUID plan) {
        return on(plan, today.day());
    }

    /** What it said when a term began on that day: the newest of that day or before, else the first that it ever said. */
    public Optional<PlanAnswer> on(UUID plan, LocalDate begins) {
        @SuppressWarnings("unchecked")
        List<Tuple> found = rows.createNativeQuery("""
                        select hours, nights from plan_answer where plan_id = :plan
                         order by day <= :day desc, case when day <= :day then day end desc,
                           case when day <= :day then id end desc, day, id""", Tuple.class)
                .setParameter("plan", plan)
                .setParameter("day", begins)
                .setMaxResults(1)
                .getResultList();
        return found.stream()
                .filter(row -> row.get("hours", Integer.class) != null)
                .map(row -> new PlanAnswer(row.get("hours", Integer.class), row.get("nights", Boolean.class)))
                .findFirst();
    }

    /** @param answer null for the business's own answer times alone */
    public void write(UUID plan, @Nullable PlanAnswer answer) {
        if (plans.find(plan).isEmpty()) {
            throw Refusal.of("call.plan-unknown").thrown();
        }
        if (answer != null && (answer.hours() < 1 || answer.hours() > AnswerHours.MOST)) {
            throw Refusal.of("call.answer-hours", Map.of("most", AnswerHours.MOST))
                    .at("hours")
                    .thrown();
        }
        rows.createNativeQuery("insert into plan_answer (plan_id, day, hours, nights)"
                        + " values (:plan, :day, cast(:hours as int), :nights)")
                .setParameter("plan", plan)
                .setParameter("day", today.day())
                .setParameter("hours", answer == null ? null : String.valueOf(answer.hours()))
                .setParameter("nights", answer == null || answer.nights())
                .executeUpdate();
    }

    /** By when a plan is there for somebody who rang then. */
    Instant promise(PlanAnswer answer, Instant rangAt) {
        ZoneId zone = businesses.current().zone();
        if (answer.nights()) {
            return answer.promise(rangAt, zone, _ -> Optional.empty());
        }
        LocalDate day = LocalDate.ofInstant(rangAt, zone);
        Roster roster = rosters.of(new Window(day, day.plusDays(A_YEAR)));
        return answer.promise(rangAt, zone, asked -> open(roster, asked));
    }

    private static Optional<PlanAnswer.Open> open(Roster roster, LocalDate day) {
        List<Roster.Hours> hours = roster.open(day);
        return hours.stream()
                .map(Roster.Hours::starts)
                .min(Comparator.naturalOrder())
                .flatMap(from -> hours.stream()
                        .map(Roster.Hours::ends)
                        .max(Comparator.naturalOrder())
                        .map(until -> new PlanAnswer.Open(from, until)));
    }
}
