package changeover.deploy.rule;

import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.Due.Act;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.Pin;
import changeover.scheduling.visits.Promise;
import changeover.scheduling.visits.PromisedTask;
import changeover.scheduling.visits.Promises;
import changeover.scheduling.visits.VisitPlan;
import changeover.scheduling.visits.VisitsNeeded;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** A home's year in the fewest visits, each with the reasons it exists. */
final class VisitPlanRule implements Rule {
    @Override
    public String name() {
        return "visitplan";
    }

    @Override
    public String says() {
        return "Puts a home's promises into the fewest visits that touch every window, never fewer than sold, says why each"
                + " exists, and names what is not kept.";
    }

    @Override
    public String example() {
        return """
                {"visits": 2, "term": {"from": "2027-04-01", "months": 12}, "carriesOpenSeason": true, "minutesAtMost": 180,
                 "equipment": [{"name": "furnace", "kind": "gas-furnace", "fits": {}, "lastDone": {"filter-thin": "2027-03-01"}}],
                 "promises": [{"name": "any work", "from": "2027-05-01", "until": "2027-07-01", "minutes": 30,
                               "basis": "label on the machine", "source": "its manual, page 12"}],
                 "pinned": [{"day": "2027-05-10", "takesMore": true, "tasks": [{"task": "any work"}]}]}
                ("equipment" takes the catalogue's tasks for its kind, or those of its "tasks" list; "promises" are windows of
                 your own; without "minutesAtMost" a visit is as long as its work; "tasks" of a pinned visit are what it holds
                 already, named as in an answer: give an answer's visits back with a day each, and nothing changes)""";
    }

    @Override
    public JsonNode answer(Question question) {
        Term term = question.term("term");
        SeasonRules rules = WindowsRule.rules(question);
        LongestVisit longest =
                question.has("minutesAtMost") ? new LongestVisit(question.number("minutesAtMost")) : LongestVisit.ANY;
        var said = new VisitsSaid();
        List<Promise> promises = new ArrayList<>(Promises.in(term, tasks(question, said), rules));
        question.parts("promises").forEach(part -> promises.add(promise(part, said)));
        VisitsNeeded needed = VisitsNeeded.of(promises, longest);
        List<Pin> pins = new PinnedAsked(promises, said).taken(question.parts("pinned"));
        return said.answer(VisitPlan.of(promises, question.number("visits"), term, pins, rules, longest), needed);
    }

    private static List<PromisedTask> tasks(Question question, VisitsSaid said) {
        List<PromisedTask> all = new ArrayList<>();
        for (Question machine : question.parts("equipment")) {
            Question last = machine.has("lastDone") ? machine.part("lastDone") : new Question(Answers.object(), "");
            for (Task task : chosen(machine)) {
                all.add(PromisedTask.of(
                        said.id(machine.text("name", machine.text("kind"))),
                        task,
                        new History(last.maybeDay(task.code()).orElse(null), List.of())));
            }
        }
        return all;
    }

    private static List<Task> chosen(Question machine) {
        if (machine.has("tasks")) {
            return machine.texts("tasks").stream().map(Question::taskOf).toList();
        }
        String kind = machine.text("kind");
        if (Catalogue.shipped().findKind(kind).isEmpty()) {
            throw new IllegalArgumentException("The catalogue has no kind of equipment " + kind + ".");
        }
        return Catalogue.shipped().tasksFor(kind, machine.words("fits"));
    }

    private static Promise promise(Question part, VisitsSaid said) {
        Window window = new Window(part.day("from"), part.day("until"));
        String name = part.text("name", "promise");
        int minutes = part.number("minutes", 0);
        if (minutes < 0 || minutes > 100_000) {
            throw new IllegalArgumentException("minutes must be from 0 to 100000 in promises, not " + minutes + ".");
        }
        Promise promise = new Promise(
                said.id(part.text("equipment", name)),
                name,
                Who.ofCode(part.text("who", "technician")),
                minutes,
                new Due(window, window.from(), Act.DO),
                new Wording(name, name));
        said.own(promise, part.text("basis", ""), part.text("source", ""));
        return promise;
    }
}
