package changeover.contracts.catalogue;

import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import java.util.List;

/** What must be true of every kind of equipment, shipped or a business's own: its facts have names, units and choices. */
public final class KindRules {

    private KindRules() {}

    /** Everything that is wrong with it; a fact's fields are named {@code fits-0-name}, {@code plate-0-unit}. */
    public static List<Refusal> of(Kind kind, Catalogue trade) {
        var checks = new Checks();
        checks.refuseIf(!OwnTasks.isCode(kind.code()), "code", "code.shape");
        checks.line("wordingEn", kind.wording().en());
        checks.line("wordingFr", kind.wording().fr());
        facts(kind.fits(), "fits-", trade, checks);
        facts(kind.nameplate(), "plate-", trade, checks);
        return checks.refusals();
    }

    private static void facts(List<Fact> facts, String prefix, Catalogue trade, Checks checks) {
        for (int at = 0; at < facts.size(); at++) {
            Fact fact = facts.get(at);
            String field = prefix + at + "-";
            checks.refuseIf(!OwnTasks.isCode(fact.name()), field + "name", "code.shape");
            checks.refuseIf(
                    facts.subList(0, at).stream()
                            .anyMatch(earlier -> earlier.name().equals(fact.name())),
                    field + "name",
                    "own-kind.fact-twice");
            checks.line(field + "en", fact.wording().en());
            checks.line(field + "fr", fact.wording().fr());
            boolean number = fact.form() == Fact.Form.NUMBER;
            checks.refuseIf(
                    number
                            && (fact.unit() == null
                                    || UnitOfMeasure.find(fact.unit()).isEmpty()),
                    field + "unit",
                    "own-task.unit-missing");
            checks.refuseIf(!number && fact.unit() != null, field + "unit", "own-task.unit-without-number");
            boolean choice = fact.form() == Fact.Form.CHOICE;
            checks.refuseIf(choice && fact.choices().isEmpty(), field + "choices", "own-kind.no-choices");
            checks.refuseIf(!choice && !fact.choices().isEmpty(), field + "choices", "own-kind.choices-unasked");
            checks.refuseIf(
                    fact.part() != null && trade.findPart(fact.part()).isEmpty(),
                    field + "part",
                    "own-task.part-unknown");
        }
    }
}
