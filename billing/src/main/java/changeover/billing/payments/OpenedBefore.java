package changeover.billing.payments;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What customers still owe from before the take-over. It stands in the books from that day on and is as old as its own day;
 * what a customer paid beyond their documents pays the oldest of it first.
 */
@ApplicationScoped
public class OpenedBefore {

    /** The day from which a row {@code o} stands in the books. */
    public static final String BOOKED =
            "greatest(o.since, (select t.day from take_over t where t.tenant_id = o.tenant_id))";

    /** Of the customer of {@code b}, a row of the balances, whose documents are {@code a}: asks for the day once. */
    static final String OF_A_CUSTOMER = """
            select o.since as due_day, o.words, greatest(0, least(o.amount_minor, b.minor - coalesce(a.open, 0) - coalesce(
                     sum(o.amount_minor) over (order by o.since desc, o.id desc rows between unbounded preceding and 1 preceding),
                     0)))::bigint as open_minor
              from opening_balance o where o.customer_id = b.customer_id and %s <= ?::date""".formatted(BOOKED);

    private static final String ITEMS =
            OpenSql.OPEN + AgeingSql.BALANCE + AgeingSql.DOCUMENTED + """
            select b.customer_id, coalesce(c.name, ''), x.due_day, x.words, x.open_minor
              from balance b
              left join documented a on a.customer_id = b.customer_id
              left join customer c on c.id = b.customer_id
              cross join lateral (%s) x
             where x.open_minor > 0 and ?::date - x.due_day between ? and ?
             order by x.due_day, 2, x.words""".formatted(OF_A_CUSTOMER);

    private static final String SUM =
            OpenSql.OPEN + AgeingSql.BALANCE + AgeingSql.DOCUMENTED + """
            select coalesce(sum(x.open_minor), 0)::bigint
              from balance b left join documented a on a.customer_id = b.customer_id
              cross join lateral (%s) x""".formatted(OF_A_CUSTOMER);

    private static final int DAYS = OpenSql.DAYS + AgeingSql.BALANCE_DAYS + 1;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** @param words what the old books call it */
    public record Item(UUID customerId, String customer, LocalDate since, String words, Money open) {}

    /** The oldest first; no age is every age. */
    public List<Item> on(LocalDate day, @Nullable Age age) {
        Currency currency = businesses.current().currency();
        List<Item> items = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(ITEMS)) {
            Owed.bindDays(select, day, DAYS);
            select.setObject(DAYS + 1, day);
            select.setInt(DAYS + 2, age == null ? Integer.MIN_VALUE : age.least());
            select.setInt(DAYS + 3, age == null ? Integer.MAX_VALUE : age.most());
            ResultSet row = select.executeQuery();
            while (row.next()) {
                items.add(new Item(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        row.getObject(3, LocalDate.class),
                        row.getString(4),
                        new Money(row.getLong(5), currency)));
            }
            return items;
        } catch (SQLException cause) {
            throw new IllegalStateException("what is owed from before could not be read", cause);
        }
    }

    /** All of it, of the business that the connection works for. */
    public static long minor(Connection connection, LocalDate day) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(SUM)) {
            Owed.bindDays(select, day, DAYS);
            ResultSet row = select.executeQuery();
            row.next();
            return row.getLong(1);
        }
    }
}
