package changeover.deploy.rule;

import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.Due.Act;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.Pin;
import changeover.scheduling.visits.PlannedVisit;
import changeover.scheduling.visits.Promise;
import changeover.scheduling.visits.PromisedTask;
import changeover.scheduling.visits.Promises;
import changeover.scheduling.visits.VisitPlan;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A home's year in the fewest visits. */
final class VisitPlanRule implements Rule {
    private final Map<UUID, String> names = new HashMap<>();

    @Override
    public String name() {
        return "visitplan";
    }

    @Override
    public String says() {
        return "Puts a home's promises into the fewest visits that touch every window, never fewer than sold, and names what is not kept.";
    }

    @Override
    public String example() {
        return """
                {"visits": 2, "term": {"from": "2027-04-01", "months": 12}, "carriesOpenSeason": true,
                 "equipment": [{"name": "furnace", "kind": "gas-furnace", "fits": {}, "lastDone": {"filter-thin": "2027-03-01"}}],
                 "promises": [{"name": "any work", "from": "2027-05-01", "until": "2027-07-01", "minutes": 30}],
                 "pinned": [{"day": "2027-05-10"}]}
                ("equipment" takes the catalogue's tasks for its kind, or those of its "tasks" list; "promises" are windows of your own)""";
    }

    @Override
    public JsonNode answer(Question question) {
        Term term = question.term("term");
        SeasonRules rules = WindowsRule.rules(question);
        List<Promise> promises = new ArrayList<>(Promises.in(term, tasks(question), rules));
        question.parts("promises").forEach(part -> promises.add(promise(part)));
        List<Pin> pins = question.parts("pinned").stream()
                .map(part -> new Pin(UUID.randomUUID(), part.day("day"), part.yes("takesMore", true)))
                .toList();
        VisitPlan plan = VisitPlan.of(promises, question.number("visits"), term, pins, rules);
        ObjectNode answer = Answers.object();
        ArrayNode visits = answer.putArray("visits");
        plan.visits().forEach(visit -> visits.add(visit(visit)));
        ArrayNode unkept = answer.putArray("unkept");
        plan.unkept().forEach(one -> unkept.add(said(one.promise()).set("why", Answers.wording(one.why()))));
        ArrayNode household = answer.putArray("household");
        plan.household().forEach(one -> household.add(said(one)));
        return answer;
    }

    private List<PromisedTask> tasks(Question question) {
        List<PromisedTask> all = new ArrayList<>();
        for (Question machine : question.parts("equipment")) {
            UUID id = id(machine.text("name", machine.text("kind")));
            Question last = machine.has("lastDone") ? machine.part("lastDone") : new Question(Answers.object(), "");
            for (Task task : chosen(machine)) {
                all.add(PromisedTask.of(
                        id,
                        task,
                        new changeover.contracts.catalogue.History(
                                last.maybeDay(task.code()).orElse(null), List.of())));
            }
        }
        return all;
    }

    private static List<Task> chosen(Question machine) {
        if (machine.has("tasks")) {
            List<Task> named = new ArrayList<>();
            machine.part("tasks")
                    .json()
                    .forEach(code -> named.add(Catalogue.shipped().task(code.asText())));
            return named;
        }
        return Catalogue.shipped().tasksFor(machine.text("kind"), machine.words("fits"));
    }

    private Promise promise(Question part) {
        Window window = new Window(part.day("from"), part.day("until"));
        String name = part.text("name", "promise");
        return new Promise(
                id(part.text("equipment", name)),
                name,
                Who.ofCode(part.text("who", "technician")),
                part.number("minutes", 0),
                new Due(window, window.from(), Act.DO),
                new Wording(name, name));
    }

    private UUID id(String name) {
        UUID id = UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        names.put(id, name);
        return id;
    }

    private ObjectNode visit(PlannedVisit visit) {
        ObjectNode said = Answers.window(visit.window()).put("minutes", visit.minutes());
        said.put("pinned", visit.pinnedVisit().isPresent());
        ArrayNode tasks = said.putArray("tasks");
        visit.tasks().forEach(task -> tasks.add(said(task)));
        return said;
    }

    private ObjectNode said(Promise promise) {
        ObjectNode said = WindowsRule.due(promise.due());
        said.put("equipment", names.get(promise.equipmentId()))
                .put("task", promise.taskCode())
                .put("minutes", promise.minutes());
        return said.set("reason", Answers.wording(promise.reason()));
    }
}
