package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/**
 * What customers paid beyond what they owe, at the end of a day: what is open, from before the take-over too, less their balance. Below
 * nought where money went back and the payment it came from was undone.
 */
public final class KeptCredits {

    private static final String KEPT =
            OpenSql.OPEN + AgeingSql.BALANCE + AgeingSql.DOCUMENTED + """
            , before as (
              select o.customer_id, sum(o.amount_minor) as minor from opening_balance o
               where %s <= ?::date group by o.customer_id),
            kept as (
              select b.customer_id, coalesce(a.open, 0) - b.minor
                       + least(greatest(0, b.minor - coalesce(a.open, 0)), coalesce(o.minor, 0)) as minor
                from balance b
                left join documented a on a.customer_id = b.customer_id
                left join before o on o.customer_id = b.customer_id)
            select k.customer_id, coalesce(c.name, ''), k.minor::bigint
              from kept k left join customer c on c.id = k.customer_id
             where k.minor <> 0""".formatted(OpenedBefore.BOOKED);

    private KeptCredits() {}

    public record Kept(String customer, Money amount) {}

    /** Of the business that the connection works for. */
    public static Map<UUID, Kept> on(Connection connection, LocalDate day, Currency currency) throws SQLException {
        Map<UUID, Kept> kept = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(KEPT)) {
            Owed.bindDays(select, day, OpenSql.DAYS + AgeingSql.BALANCE_DAYS + 1);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                kept.put(row.getObject(1, UUID.class), new Kept(row.getString(2), new Money(row.getLong(3), currency)));
            }
        }
        return kept;
    }
}
