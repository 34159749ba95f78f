package changeover.scheduling.visits;

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

    @Inject
    EntityManager rows;

    @Inject
    Event<VisitEnded> ended;

    public Optional<Visit> find(UUID id) {
        return Optional.ofNullable(rows.find(Visit.class, id));
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

    private void end(UUID visitId, VisitEnd how, LocalDate day, @Nullable String why) {
        Visit visit = find(visitId).orElseThrow();
        rows.persist(VisitEnding.of(visitId, how, day, why));
        rows.flush();
        ended.fire(new VisitEnded(List.of(new VisitEnded.Ended(
                visitId, visit.homeId(), visit.agreementId().orElse(null), how, day, why))));
    }
}
