package changeover.deploy.rule;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Grounds;
import changeover.contracts.catalogue.Task;
import changeover.scheduling.visits.PlannedVisit;
import changeover.scheduling.visits.Promise;
import changeover.scheduling.visits.VisitPlan;
import changeover.scheduling.visits.VisitsNeeded;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** How planned visits are said: the machines by their names, each task with its window, its rule and its source. */
final class VisitsSaid {
    private static final Grounds ASKED = new Grounds("as asked", null);

    private final Map<UUID, String> names = new HashMap<>();
    private final Map<Promise, Grounds> own = new IdentityHashMap<>();

    UUID id(String name) {
        UUID id = UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        names.put(id, name);
        return id;
    }

    /** A promise that the question brought with it. */
    void own(Promise promise, String basis, String source) {
        own.put(promise, new Grounds(basis.isBlank() ? ASKED.basis() : basis, source.isBlank() ? null : source));
    }

    ObjectNode answer(VisitPlan plan, VisitsNeeded needed) {
        ObjectNode answer = Answers.object();
        ArrayNode visits = answer.putArray("visits");
        plan.visits().forEach(visit -> visits.add(visit(visit)));
        ArrayNode unkept = answer.putArray("unkept");
        plan.unkept().forEach(one -> unkept.add(said(one.promise()).set("why", Answers.wording(one.why()))));
        ArrayNode household = answer.putArray("household");
        plan.household().forEach(one -> household.add(said(one)));
        answer.put("proof", plan.proof().code());
        answer.putObject("needed")
                .put("visits", needed.visits())
                .put("proof", needed.proof().code());
        return answer;
    }

    private ObjectNode visit(PlannedVisit visit) {
        ObjectNode said = Answers.window(visit.window()).put("minutes", visit.minutes());
        said.put("pinned", visit.pinnedVisit().isPresent());
        said.set("why", Answers.wording(visit.why()));
        visit.longer().ifPresent(longer -> said.set("longer", Answers.wording(longer)));
        ArrayNode tasks = said.putArray("tasks");
        sorted(visit.tasks()).forEach(task -> tasks.add(said(task)));
        return said;
    }

    /** In whichever order the question named them. */
    private List<Promise> sorted(List<Promise> promises) {
        return promises.stream()
                .sorted(Comparator.comparing(Promise::window)
                        .thenComparing(promise -> String.valueOf(names.get(promise.equipmentId())))
                        .thenComparing(Promise::taskCode)
                        .thenComparing(Promise::minutes))
                .toList();
    }

    private ObjectNode said(Promise promise) {
        ObjectNode said = WindowsRule.due(promise.due());
        said.put("equipment", names.get(promise.equipmentId()))
                .put("task", promise.taskCode())
                .put("minutes", promise.minutes())
                .set("reason", Answers.wording(promise.reason()));
        Grounds asked = own.get(promise);
        Optional<Task> shipped = asked == null ? Catalogue.shipped().findTask(promise.taskCode()) : Optional.empty();
        shipped.ifPresent(task -> said.set("rule", cadence(task)));
        Grounds grounds = asked == null ? shipped.map(Grounds::of).orElse(ASKED) : asked;
        return said.put("basis", grounds.basis()).put("source", grounds.source());
    }

    private static ObjectNode cadence(Task task) {
        try {
            return (ObjectNode) Answers.JSON.readTree(task.cadence().json());
        } catch (JsonProcessingException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
