package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One line of a customer's statement.
 *
 * @param what before (the balance brought forward), invoice, credit, payment, refund, returned (by the bank),
 *     undone, given-up (written off), taken-back (open again), deposit-applied (to a document), deposit-freed (from it) or
 *     from-before (owed when the shop was taken over)
 * @param id of the document or the payment; null on the balance brought forward
 * @param said the document's number, or the payment's reference
 * @param way how the money changed hands; null for a document
 * @param stands a payment or refund that was not undone
 * @param amount what it adds to the debt, negative when it lessens it
 * @param balance owed after it, negative when the customer has a credit
 */
public record StatementRow(
        LocalDate day,
        String what,
        @Nullable UUID id,
        @Nullable String said,
        @Nullable Way way,
        boolean stands,
        Money amount,
        Money balance) {

    /** The balance brought forward. */
    static StatementRow before(LocalDate from, Money balance) {
        return new StatementRow(from, "before", null, null, null, false, balance, balance);
    }
}
