package changeover.scheduling.closeout;

import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.ReportFacts.HouseholdFact;
import changeover.scheduling.closeout.ReportFacts.NextVisit;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What comes to a home after a visit: the next visit, and until then what the household does itself. */
@ApplicationScoped
class Coming {

    private static final String NEXT = """
            select v.id, v.window_from, v.window_until, a.day, a.starts
              from visit v left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
             where v.home_id = :home and v.id <> :visit and v.window_until > :day
               and not exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
             order by coalesce(a.day, v.window_from), v.id limit 1
            """;

    private static final String HOUSEHOLD = """
            select t.due_on, t.wording_en, t.wording_fr, q.name
              from household_task t left join equipment q on q.tenant_id = t.tenant_id and q.id = t.equipment_id
             where t.home_id = :home and t.done_on is null and t.due_on >= :day and t.due_on < :until
             order by t.due_on, t.id
            """;

    @Inject
    EntityManager rows;

    Optional<NextVisit> next(VisitAtHand visit, LocalDate day) {
        return tuples(rows.createNativeQuery(NEXT, Tuple.class)
                        .setParameter("home", visit.homeId())
                        .setParameter("visit", visit.id())
                        .setParameter("day", day))
                .stream()
                .map(row -> new NextVisit(
                        row.get(0, UUID.class),
                        row.get(1, LocalDate.class),
                        row.get(2, LocalDate.class).minusDays(1),
                        row.get(3, LocalDate.class),
                        row.get(4, LocalTime.class)))
                .findFirst();
    }

    List<HouseholdFact> household(VisitAtHand visit, LocalDate day, LocalDate until) {
        return tuples(rows.createNativeQuery(HOUSEHOLD, Tuple.class)
                        .setParameter("home", visit.homeId())
                        .setParameter("day", day)
                        .setParameter("until", until))
                .stream()
                .map(row -> new HouseholdFact(
                        row.get(0, LocalDate.class),
                        new Wording(row.get(1, String.class), row.get(2, String.class)),
                        row.get(3, String.class)))
                .toList();
    }

    @SuppressWarnings("unchecked")
    private static List<Tuple> tuples(Query asked) {
        return (List<Tuple>) asked.getResultList();
    }
}
