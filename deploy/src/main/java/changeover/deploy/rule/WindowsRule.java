package changeover.deploy.rule;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.SeasonRules;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;

/** When a cadence falls due in a term. */
final class WindowsRule implements Rule {
    @Override
    public String name() {
        return "windows";
    }

    @Override
    public String says() {
        return "Says between which days a task falls due in a term, by its cadence or by a task of the catalogue.";
    }

    @Override
    public String example() {
        return """
                {"cadence": {"how": "each-season", "seasons": ["cooling", "heating"]},
                 "term": {"from": "2026-10-20", "months": 12},
                 "lastDone": "2026-05-02", "carriesOpenSeason": true}
                (or "task": "filter-thin" instead of the cadence; the other cadences are
                 {"how": "every-months", "months": 3, "min": 3, "max": 3}, {"how": "before-season", "season": "cooling", "lead": "P2M"},
                 {"how": "times-a-year", "times": 4}, {"how": "check-then-replace", "checkMonths": 1, "capMonths": 6}, {"how": "on-request"})""";
    }

    @Override
    public JsonNode answer(Question question) {
        Cadence cadence = question.has("cadence")
                ? cadence(question)
                : question.task("task").cadence();
        List<Due> dues = cadence.duesIn(question.term("term"), history(question), rules(question));
        ObjectNode answer = Answers.object();
        ArrayNode windows = answer.putArray("windows");
        dues.forEach(due -> windows.add(due(due)));
        return answer;
    }

    static Cadence cadence(Question question) {
        String said = question.part("cadence").json().toString();
        try {
            return CatalogueJson.read(said, Cadence.class);
        } catch (IllegalArgumentException notOne) {
            Throwable why = notOne;
            while (why.getCause() != null) {
                why = why.getCause();
            }
            throw new IllegalArgumentException(
                    why instanceof JsonProcessingException
                            ? "cadence is none of those that deploy/rule windows --help shows: " + said + "."
                            : why.getMessage(),
                    notOne);
        }
    }

    static History history(Question question) {
        return new History(
                question.maybeDay("lastDone").orElse(null),
                question.parts("promised").stream()
                        .map(part -> new Window(part.day("from"), part.day("until")))
                        .toList());
    }

    static SeasonRules rules(Question question) {
        return new SeasonRules(Climate.cold(), question.yes("carriesOpenSeason", true));
    }

    static ObjectNode due(Due due) {
        return Answers.window(due.window())
                .put("on", due.on().toString())
                .put("act", due.act().name().toLowerCase(Locale.ROOT));
    }
}
