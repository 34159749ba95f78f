package changeover.billing.tax;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.RegionNames;
import changeover.contracts.words.Wording;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The taxes of a document follow the address of the work and the day the tax becomes payable.
 *
 * <p>Of each tax, known by its code, one row is used: among those that hold the one that says most of the case, then the one that
 * began last. A row of the business's own takes the place of the shipped rows of its tax; the place's other taxes stay. A place
 * without a row is a refusal, never nought.
 */
public record TaxTable(List<TaxRow> shipped, List<TaxRow> own) {

    public TaxAnswer taxesFor(TaxQuestion question) {
        List<TaxRow> rows = rowsFor(question);
        return rows.isEmpty()
                ? new TaxAnswer.Unknown(unknown(question))
                : new TaxAnswer.Known(rows.stream().map(TaxRow::tax).toList());
    }

    /** In the order printed: an own row stands where the shipped one of its tax stood. */
    private List<TaxRow> rowsFor(TaxQuestion question) {
        Map<String, TaxRow> rows = oneOfEach(shipped, question);
        Map<String, TaxRow> instead = oneOfEach(own, question);
        if (instead.containsKey(HarmonizedTax.CODE)) {
            rows.keySet().removeAll(HarmonizedTax.PARTS);
        }
        rows.putAll(instead);
        return List.copyOf(rows.values());
    }

    private static Map<String, TaxRow> oneOfEach(List<TaxRow> rows, TaxQuestion question) {
        Map<String, TaxRow> best = new LinkedHashMap<>();
        for (TaxRow row : rows) {
            if (row.holdsFor(question)) {
                best.merge(row.tax().code(), row, (one, other) -> other.outranks(one) ? other : one);
            }
        }
        return best;
    }

    /** A place whose rows are for other cases only says for which. */
    private Refusal unknown(TaxQuestion question) {
        List<Wording> others = Stream.concat(own.stream(), shipped.stream())
                .filter(row -> row.holdsIn(question.region(), question.day()))
                .map(TaxRow::cases)
                .distinct()
                .toList();
        if (others.isEmpty()) {
            return Refusal.of(
                    "tax.place-unknown",
                    Map.of("region", RegionNames.of(question.region()), "day", DayInWords.of(question.day())));
        }
        return Refusal.of(
                "tax.case-unknown",
                Map.of(
                        "region",
                        RegionNames.of(question.region()),
                        "day",
                        DayInWords.of(question.day()),
                        "case",
                        question.inWords(),
                        "others",
                        new Wording(
                                others.stream().map(Wording::en).collect(Collectors.joining("; ")),
                                others.stream().map(Wording::fr).collect(Collectors.joining("; ")))));
    }

    /** What is charged from the added row's first day on in its place, for the cases that it is about. */
    public List<TaxRow> chargedWith(TaxRow added) {
        TaxTable table = new TaxTable(
                shipped, Stream.concat(own.stream(), Stream.of(added)).toList());
        return TaxQuestion.everyCase(added.tax().region(), added.from())
                .filter(added::holdsFor)
                .flatMap(question -> table.rowsFor(question).stream())
                .distinct()
                .toList();
    }
}
