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
        Money closing) {

    /**
     * @param what invoice, credit, payment, refund, returned or undone
     * @param said the document's number or the payment's reference
     */
    public record Line(LocalDate day, String what, String said, Money amount, Money balance) {}

    public StatementSheet {
        to = List.copyOf(to);
        lines = List.copyOf(lines);
    }
}
