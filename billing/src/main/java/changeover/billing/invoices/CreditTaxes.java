package changeover.billing.invoices;

import changeover.contracts.words.Refusal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A credit note gives back, of each tax, what was charged less what is due on the amount kept (the cumulative method), so
 * that all credit notes together never give back more than was charged, nor leave a cent of tax on nothing.
 *
 * @param charged the invoice's lines; a credit note's lines carry the positions of the lines they correct
 * @param taxes the invoice's taxes
 * @param creditedLines lines of the credit notes issued before
 * @param creditedTaxes their taxes
 */
record CreditTaxes(
        List<LineRow> charged, List<PrintedTax> taxes, List<LineRow> creditedLines, List<PrintedTax> creditedTaxes) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

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

    private PrintedTax row(Waiting credit, PrintedTax tax, List<Integer> lines, int position) {
        long base = credit.lines().stream()
                .filter(line -> lines.contains(line.position()))
                .mapToLong(LineRow::netMinor)
                .sum();
        List<PrintedTax> before =
                creditedTaxes.stream().filter(one -> sameTax(one, tax)).toList();
        long baseBefore = before.stream().mapToLong(PrintedTax::baseMinor).sum();
        long amountBefore = before.stream().mapToLong(PrintedTax::amountMinor).sum();
        long kept = Math.subtractExact(tax.baseMinor(), Math.addExact(baseBefore, base));
        long amount = tax.amountMinor() - percent(kept, tax.percent()) - amountBefore;
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
                lines);
    }

    private static boolean sameTax(PrintedTax one, PrintedTax other) {
        return one.code().equals(other.code())
                && one.region().equals(other.region())
                && one.percent().compareTo(other.percent()) == 0
                && one.category().equals(other.category());
    }

    private static long percent(long minor, BigDecimal percent) {
        return BigDecimal.valueOf(minor)
                .multiply(percent)
                .divide(HUNDRED, 0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static long sum(List<LineRow> lines, int position) {
        return lines.stream()
                .filter(line -> line.position() == position)
                .mapToLong(LineRow::netMinor)
                .sum();
    }
}
