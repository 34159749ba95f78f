package changeover.scheduling.dayplan;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.scheduling.visits.VisitTask;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** What the visits of the current business ask of whoever is sent. */
@ApplicationScoped
public class Needs {

    @Inject
    EntityManager rows;

    @Inject
    Visits visits;

    @Inject
    OwnCatalogue trade;

    /** All that a visit asks: by its tickets, by its tasks, and by hand. */
    public Need of(UUID visitId) {
        List<VisitTask> tasks = visits.tasksOf(visitId);
        Need tickets = new Need(
                1, tasks.stream().flatMap(task -> task.ticket().stream()).collect(Collectors.toSet()), null, null);
        List<String> codes = tasks.stream().map(VisitTask::taskCode).toList();
        Need byTasks = ofTasks().stream()
                .filter(one -> codes.contains(one.taskCode()))
                .map(TaskNeed::need)
                .reduce(tickets, Need::with);
        return byTasks.under(byHand(visitId).map(VisitNeed::need).orElse(Need.NOTHING));
    }

    public Optional<VisitNeed> byHand(UUID visitId) {
        return rows.createQuery("from VisitNeed where visitId = :visit", VisitNeed.class)
                .setParameter("visit", visitId)
                .getResultStream()
                .findFirst();
    }

    public List<TaskNeed> ofTasks() {
        return rows.createQuery("from TaskNeed order by taskCode", TaskNeed.class)
                .getResultList();
    }

    /** Writes what one visit asks, over what somebody wrote before, if that is still what the writer saw. */
    public VisitNeed write(UUID visitId, Need need, String why, FilledOn seen) {
        check(need, why);
        Optional<VisitNeed> before = byHand(visitId);
        seen.mustBe(before.map(VisitNeed::version).orElse(-1));
        VisitNeed row = before.orElseGet(() -> VisitNeed.of(visitId));
        row.rewrite(need, why.strip());
        rows.persist(row);
        rows.flush();
        return row;
    }

    /** Writes what a task asks in every home, over what was written before. */
    public TaskNeed write(String taskCode, Need need, String why) {
        check(need, why);
        if (trade.catalogue().findTask(taskCode).isEmpty()) {
            throw Refusal.of("need.task-unknown").at("task").thrown();
        }
        TaskNeed row = ofTasks().stream()
                .filter(one -> one.taskCode().equals(taskCode))
                .findFirst()
                .orElseGet(() -> TaskNeed.of(taskCode));
        row.rewrite(need, why.strip());
        rows.persist(row);
        rows.flush();
        return row;
    }

    private static void check(Need need, String why) {
        if (why.isBlank()) {
            throw Refusal.of("need.says-why").at("why").thrown();
        }
        if (need.earliest() != null && need.latest() != null && need.latest().isBefore(need.earliest())) {
            throw Refusal.of("need.hours").at("latest").thrown();
        }
    }
}
