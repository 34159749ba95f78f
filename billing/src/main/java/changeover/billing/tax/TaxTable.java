package changeover.billing.tax;

import changeover.contracts.words.Refusal;
import java.util.List;
import java.util.Map;

/**
 * The taxes of a document follow the address of the work and the day the tax becomes payable.
 *
 * <p>The business's own rows outrank the shipped ones; among rows that hold, the most precise answer together. A place
 * without a row is a refusal, never nought.
 */
public record TaxTable(List<TaxRow> shipped, List<TaxRow> own) {

    public TaxAnswer taxesFor(TaxQuestion question) {
        List<Tax> taxes = mostPrecise(own, question);
        if (taxes.isEmpty()) {
            taxes = mostPrecise(shipped, question);
        }
        return taxes.isEmpty()
                ? new TaxAnswer.Unknown(
                        Refusal.of("tax.place-unknown", Map.of("region", question.region(), "day", question.day())))
                : new TaxAnswer.Known(taxes);
    }

    private static List<Tax> mostPrecise(List<TaxRow> rows, TaxQuestion question) {
        List<TaxRow> holding =
                rows.stream().filter(row -> row.holdsFor(question)).toList();
        int best = holding.stream().mapToInt(TaxRow::precision).max().orElse(0);
        return holding.stream()
                .filter(row -> row.precision() == best)
                .map(TaxRow::tax)
                .toList();
    }
}
