package changeover.scheduling.visits;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The visits of the current business. */
@ApplicationScoped
public class Visits {

    private static final String FALLS = """
            select v.* from visit v
              left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
            """ + GivenOut.JOINED + """
             where v.tenant_id = current_tenant() and v.agreement_id = :agreement
               and not exists (select from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
               and (coalesce(a.day, w.day) >= :today and coalesce(a.day, w.day) < :day
                 or coalesce(a.day, w.day) is null and cast(:day as date) > :today and v.window_until <= :day) is not true
            """;

    @Inject
    EntityManager rows;

    @Inject
    OwnCatalogue trade;

    @Inject
    Today today;

    @Inject
    Event<VisitEnded> ended;

    /** Makes a visit that no plan promised, with its checklist. */
    public Visit make(NewVisit facts) {
        Catalogue catalogue = trade.catalogue();
        int minutes = facts.minutes() > 0
                ? facts.minutes()
                : facts.tasks().stream()
                        .mapToInt(task -> catalogue.task(task.taskCode()).minutes())
                        .sum();
        Visit visit = Visit.beyondThePlan(facts, minutes);
        rows.persist(visit);
        int position = 0;
        for (NewVisit.NewTask task : facts.tasks()) {
            Task known = catalogue.task(task.taskCode());
            rows.persist(VisitTask.of(visit, known, task, YearRows.body(known), position++));
        }
        rows.flush();
        return visit;
    }

    public Optional<Visit> find(UUID id) {
        return Optional.ofNullable(rows.find(Visit.class, id));
    }

    /** Whoever goes there reads the new words, where the visit has not ended and still carries the old ones. */
    public void noteAgain(UUID visitId, String before, String now) {
        find(visitId)
                .filter(visit -> visit.note().filter(before::equals).isPresent())
                .filter(visit -> ending(visitId).isEmpty())
                .ifPresent(visit -> {
                    visit.readAgain(now);
                    rows.flush();
                });
    }

    public List<VisitTask> tasksOf(UUID visitId) {
        return rows.createQuery("from VisitTask where visitId = :visit order by position, id", VisitTask.class)
                .setParameter("visit", visitId)
                .getResultList();
    }

    public Optional<VisitEnding> ending(UUID visitId) {
        return rows.createQuery("from VisitEnding where visitId = :visit", VisitEnding.class)
                .setParameter("visit", visitId)
                .getResultStream()
                .findFirst();
    }

    /** Somebody was there: the close-out says what was done. */
    public void close(UUID visitId, LocalDate day) {
        end(visitId, VisitEnd.CLOSED, day, null);
    }

    /** It is no longer wanted. */
    public void cancel(UUID visitId, LocalDate day, String why) {
        end(visitId, VisitEnd.CANCELLED, day, why);
    }

    /** We were there and nobody let us in. */
    public void noAccess(UUID visitId, LocalDate day, String why) {
        end(visitId, VisitEnd.NO_ACCESS, day, why);
    }

    /** We did not come. */
    public void notKept(UUID visitId, LocalDate day, String why) {
        end(visitId, VisitEnd.NOT_KEPT, day, why);
    }

    /**
     * The agreement promises nothing more from that day on: its open visits are cancelled and the household's open tasks from that
     * day on go. While the day is still to come, what has a day before it, with us or a partner, stays, and so does what has
     * none yet and was to be made before it; what nobody made by then falls with the day.
     */
    @SuppressWarnings("unchecked")
    void letFall(UUID agreementId, LocalDate day, String why) {
        rows.flush();
        List<Visit> open = rows.createNativeQuery(FALLS, Visit.class)
                .setParameter("agreement", agreementId)
                .setParameter("today", today.day())
                .setParameter("day", day)
                .getResultList();
        open.forEach(visit -> rows.persist(VisitEnding.of(visit.id(), VisitEnd.CANCELLED, day, why)));
        rows.createNativeQuery(
                        "delete from household_task where agreement_id = :agreement and done_on is null and due_on >= :day")
                .setParameter("agreement", agreementId)
                .setParameter("day", day)
                .executeUpdate();
        rows.flush();
        ended.fire(new VisitEnded(open.stream()
                .map(visit ->
                        new VisitEnded.Ended(visit.id(), visit.homeId(), agreementId, VisitEnd.CANCELLED, day, why))
                .toList()));
    }

    private void end(UUID visitId, VisitEnd how, LocalDate day, @Nullable String why) {
        Visit visit =
                find(visitId).orElseThrow(() -> Refusal.of("visit.unknown").thrown());
        if (how != VisitEnd.CLOSED && (why == null || why.isBlank())) {
            throw Refusal.of("visit.ending-says-why").at("why").thrown();
        }
        rows.persist(VisitEnding.of(visitId, how, day, why));
        rows.flush();
        ended.fire(new VisitEnded(List.of(new VisitEnded.Ended(
                visitId, visit.homeId(), visit.agreementId().orElse(null), how, day, why))));
    }
}
