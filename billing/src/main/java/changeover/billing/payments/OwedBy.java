package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What one customer owes, or all of them together (then without id and name), by age.
 *
 * @param customers who owe something: 1 or 0 for one customer
 * @param documents open ones
 * @param open everything still to be paid
 * @param notDue its day of payment has not passed
 * @param late30 late by 1 to 30 days; then 31 to 60, 61 to 90, and more
 * @param lateDocuments open ones whose day has passed
 * @param oldestDue the earliest day on which an open document was to be paid
 * @param credit paid beyond what is owed, kept for the customer
 * @param beyond given back of a payment that did not hold afterwards: owed to us, and on no document
 */
public record OwedBy(
        @Nullable UUID customerId,
        @Nullable String customer,
        int customers,
        int documents,
        Money open,
        Money notDue,
        Money late30,
        Money late60,
        Money late90,
        Money older,
        int lateDocuments,
        @Nullable LocalDate oldestDue,
        Money credit,
        Money beyond) {

    static OwedBy of(ResultSet row, Currency currency) throws SQLException {
        return new OwedBy(
                row.getObject(1, UUID.class),
                row.getString(2),
                row.getInt(3),
                row.getInt(4),
                new Money(row.getLong(5), currency),
                new Money(row.getLong(6), currency),
                new Money(row.getLong(7), currency),
                new Money(row.getLong(8), currency),
                new Money(row.getLong(9), currency),
                new Money(row.getLong(10), currency),
                row.getInt(11),
                row.getObject(12, LocalDate.class),
                new Money(row.getLong(13), currency),
                new Money(row.getLong(14), currency));
    }

    /** Everything owed to us: open documents, and what was given back of payments that did not hold. */
    public Money all() {
        return open.plus(beyond);
    }

    /** Open and past its day. */
    public Money late() {
        return open.minus(notDue);
    }
}
