package changeover.billing.bank;

import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A line of the bank as it is kept; above nought what came in. */
public record BankLine(
        UUID id,
        UUID bankId,
        String bank,
        LocalDate day,
        Money amount,
        String words,
        @Nullable String reference,
        @Nullable Way way) {

    /** How the payment is booked: as the bank says, else as a transfer, which is what most lines of an account are. */
    public Way bookedAs() {
        return way == null ? Way.TRANSFER : way;
    }

    /** All that the bank says, for matching. */
    public String said() {
        return reference == null ? words : words + " " + reference;
    }
}
