package changeover.billing.tax;

import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Each tax is computed once on the document's taxable total and rounded half-up, never line by line and never two taxes
 * in one step (Revenu Québec, "Calculating the Taxes"). A small supplier's document has no tax line.
 */
public sealed interface DocumentTaxes {

    record Computed(List<TaxLine> lines) implements DocumentTaxes {

        public Money total(Currency currency) {
            return Money.sum(lines.stream().map(TaxLine::amount).toList(), currency);
        }
    }

    record Refused(Refusal refusal) implements DocumentTaxes {}

    /** @param day the day the tax becomes payable: the earlier of the day paid and the invoice's date */
    static DocumentTaxes of(List<Taxable> lines, LocalDate day, TaxTable table, boolean smallSupplier) {
        if (smallSupplier) {
            return new Computed(List.of());
        }
        Map<Tax, List<Taxable>> byTax = new LinkedHashMap<>();
        for (Taxable line : lines) {
            switch (table.taxesFor(new TaxQuestion(line.region(), line.property(), line.work(), line.form(), day))) {
                case TaxAnswer.Unknown unknown -> {
                    return new Refused(unknown.refusal());
                }
                case TaxAnswer.Known known ->
                    known.taxes()
                            .forEach(tax -> byTax.computeIfAbsent(tax, one -> new ArrayList<>())
                                    .add(line));
            }
        }
        return new Computed(byTax.entrySet().stream()
                .map(entry -> line(entry.getKey(), entry.getValue()))
                .toList());
    }

    private static TaxLine line(Tax tax, List<Taxable> lines) {
        Currency currency = lines.getFirst().net().currency();
        Money base = Money.sum(lines.stream().map(Taxable::net).toList(), currency);
        return new TaxLine(
                tax,
                base,
                base.percent(tax.percent()),
                lines.stream().map(Taxable::position).toList());
    }
}
