package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.UUID;

/**
 * An issued invoice with what is still to be paid of it.
 *
 * @param total tax included
 * @param credited by issued credit notes
 * @param paid by payments that were not undone
 * @param givenUp written off, and not taken back since
 * @param open never below nought: what was paid beyond it is the customer's credit
 */
public record OpenItem(
        UUID invoiceId,
        UUID customerId,
        String label,
        LocalDate day,
        LocalDate dueDay,
        Money total,
        Money credited,
        Money paid,
        Money givenUp,
        Money open) {

    /** Nothing of it was sold after all; it was never paid either, since what was paid before is the customer's again. */
    public boolean creditedInFull() {
        return credited.isPositive() && credited.compareTo(total) >= 0;
    }

    /** Where it stands on a day, as the lists say it. */
    public Standing standing(LocalDate today) {
        if (creditedInFull()) {
            return Standing.CREDITED;
        }
        if (open.isZero()) {
            return givenUp.isZero() ? Standing.PAID : Standing.GIVEN_UP;
        }
        return dueDay.isBefore(today) ? Standing.LATE : Standing.OPEN;
    }
}
