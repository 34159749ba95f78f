package changeover.billing.invoices;

import changeover.billing.tax.ChargedTax;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A credit note gives back, line by line, never more than was charged, and of each tax what {@link ChargedTax} says.
 *
 * @param charged the invoice's lines; a credit note's lines carry the positions of the lines they correct
 * @param taxes the invoice's taxes
 * @param creditedLines lines of the credit notes issued before
 * @param creditedTaxes their taxes
 */
record CreditTaxes(
        List<LineRow> charged, List<PrintedTax> taxes, List<LineRow> creditedLines, List<PrintedTax> creditedTaxes) {

    /** What of a line is not credited yet. */
    long left(int position) {
        return sum(charged, position) - sum(creditedLines, position);
    }

    /** Refused when a line would be credited beyond what was charged for it. */
    @Nullable
    Refusal refusal(List<LineRow> credit) {
        Map<Integer, Long> now = new HashMap<>();
        credit.forEach(line -> now.merge(line.position(), line.netMinor(), Long::sum));
        boolean within = now.entrySet().stream().allMatch(entry -> entry.getValue() <= left(entry.getKey()));
        return within ? null : Refusal.of("credit.more-than-charged");
    }

    List<PrintedTax> of(Waiting credit) {
        List<PrintedTax> rows = new ArrayList<>();
        for (PrintedTax tax : taxes) {
            List<Integer> lines = credit.lines().stream()
                    .map(LineRow::position)
                    .filter(tax.lines()::contains)
                    .toList();
            if (!lines.isEmpty()) {
                rows.add(row(credit, tax, lines, rows.size() + 1));
            }
        }
        return rows;
    }

    /** As it stands once this credit note, too, is issued: the next one of the same hour counts it. */
    CreditTaxes after(Waiting credit, List<PrintedTax> itsTaxes) {
        return new CreditTaxes(charged, taxes, both(creditedLines, credit.lines()), both(creditedTaxes, itsTaxes));
    }

    private static <T> List<T> both(List<T> first, List<T> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    private PrintedTax row(Waiting credit, PrintedTax tax, List<Integer> lines, int position) {
        long base = credit.lines().stream()
                .filter(line -> lines.contains(line.position()))
                .mapToLong(LineRow::netMinor)
                .sum();
        List<PrintedTax> before =
                creditedTaxes.stream().filter(one -> sameTax(one, tax)).toList();
        long baseBefore = before.stream().mapToLong(PrintedTax::baseMinor).sum();
        long amountBefore = before.stream().mapToLong(PrintedTax::amountMinor).sum();
        Currency currency = credit.currency();
        long amount = new ChargedTax(
                        tax.percent(), new Money(tax.baseMinor(), currency), new Money(tax.amountMinor(), currency))
                .back(new Money(Math.addExact(baseBefore, base), currency), new Money(amountBefore, currency))
                .minor();
        return new PrintedTax(
                credit.id(),
                position,
                tax.code(),
                tax.label(),
                tax.category(),
                tax.percent(),
                base,
                amount,
                tax.region(),
                tax.registration(),
                tax.source(),
                tax.exemption(),
                lines);
    }

    private static boolean sameTax(PrintedTax one, PrintedTax other) {
        return one.code().equals(other.code())
                && one.region().equals(other.region())
                && one.percent().compareTo(other.percent()) == 0
                && one.category().equals(other.category());
    }

    private static long sum(List<LineRow> lines, int position) {
        return lines.stream()
                .filter(line -> line.position() == position)
                .mapToLong(LineRow::netMinor)
                .sum();
    }
}
