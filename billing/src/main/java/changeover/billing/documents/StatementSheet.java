package changeover.billing.documents;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/**
 * What stands on a statement.
 *
 * @param to the customer's name, then the lines of their address
 * @param until the last day, in
 * @param opening owed before the first day; below nought for a credit
 * @param deposits kept for work to come, no part of what is owed
 */
public record StatementSheet(
        Locale language,
        Letterhead from,
        List<String> to,
        LocalDate first,
        LocalDate until,
        LocalDate day,
        Money opening,
        List<Line> lines,
        Money closing,
        Money deposits) {

    /**
     * @param what invoice, credit, payment, refund, returned, undone, deposit-applied or deposit-freed
     * @param said the document's number or the payment's reference
     */
    public record Line(LocalDate day, String what, String said, Money amount, Money balance) {}

    public StatementSheet {
        to = List.copyOf(to);
        lines = List.copyOf(lines);
    }

    /** The same in another language. */
    StatementSheet in(Locale other, Letterhead head) {
        return new StatementSheet(other, head, to, first, until, day, opening, lines, closing, deposits);
    }
}
