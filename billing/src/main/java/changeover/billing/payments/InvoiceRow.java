package changeover.billing.payments;

import changeover.billing.invoices.DocumentKind;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A document in a list.
 *
 * @param label null on a draft
 * @param homeId null on a joint invoice of several homes
 * @param street of the work, empty on a joint invoice
 * @param day of issue, or the first day on which a draft may be issued
 * @param dueDay null on a draft
 * @param amount tax included once issued, before tax on a draft
 * @param open what is still to be paid; nought on a draft and on a credit note
 */
public record InvoiceRow(
        UUID id,
        DocumentKind kind,
        @Nullable String label,
        UUID customerId,
        String customer,
        @Nullable UUID homeId,
        String street,
        LocalDate day,
        @Nullable LocalDate dueDay,
        Money amount,
        Money open,
        Standing standing) {}
