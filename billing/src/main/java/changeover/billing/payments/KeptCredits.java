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
 * What customers paid beyond what they owe, at the end of a day: what is open of their documents less their balance. Below
 * nought where money went back and the payment it came from was undone.
 */
public final class KeptCredits {

    private static final String KEPT = OpenSql.OPEN + AgeingSql.BALANCE + """
            , open as (select customer_id, sum(open_minor) as minor from item group by customer_id)
            select b.customer_id, coalesce(c.name, ''), (coalesce(o.minor, 0) - b.minor)::bigint
              from balance b
              left join open o on o.customer_id = b.customer_id
              left join customer c on c.id = b.customer_id
             where coalesce(o.minor, 0) <> b.minor""";

    private KeptCredits() {}

    public record Kept(String customer, Money amount) {}

    /** Of the business that the connection works for. */
    public static Map<UUID, Kept> on(Connection connection, LocalDate day, Currency currency) throws SQLException {
        Map<UUID, Kept> kept = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(KEPT)) {
            Owed.bindDays(select, day, OpenSql.DAYS + AgeingSql.BALANCE_DAYS);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                kept.put(row.getObject(1, UUID.class), new Kept(row.getString(2), new Money(row.getLong(3), currency)));
            }
        }
        return kept;
    }
}
