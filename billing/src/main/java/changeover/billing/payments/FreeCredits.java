package changeover.billing.payments;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

/** What is kept for customers beyond deposits and would pay what they owe; a deposit pays nothing before it is applied. */
@ApplicationScoped
public class FreeCredits {

    /** What belongs to each of a few customers is looked up by its index. */
    private static final String OF_FEW = OpenSql.OPEN_OF_FEW + AgeingSql.BALANCE + """
            , open as (
              select customer_id, sum(open_minor) as minor from item where customer_id = any (?) group by customer_id)
            select b.customer_id, (coalesce(o.minor, 0) - b.minor)::bigint
              from balance b left join open o on o.customer_id = b.customer_id
             where b.customer_id = any (?) and coalesce(o.minor, 0) > b.minor""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    @Inject
    Owed owed;

    @Inject
    DepositsHeld deposits;

    /** Of all customers who have some. */
    public Map<UUID, Money> all(LocalDate day) {
        Map<UUID, Money> credits = new HashMap<>();
        for (OwedBy one : owed.byCustomer(day)) {
            credits.put(Objects.requireNonNull(one.customerId()), one.credit());
        }
        return beyond(credits, deposits.byCustomer(day));
    }

    /** Of those among a few who have some. */
    public Map<UUID, Money> of(Collection<UUID> customers, LocalDate day) {
        Currency currency = businesses.current().currency();
        Map<UUID, Money> credits = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(OF_FEW)) {
            Array few = connection.createArrayOf("uuid", customers.toArray());
            int days = OpenSql.DAYS + AgeingSql.BALANCE_DAYS;
            Owed.bindDays(select, day, days);
            select.setArray(days + 1, few);
            select.setArray(days + 2, few);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                credits.put(row.getObject(1, UUID.class), new Money(row.getLong(2), currency));
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("what is kept for customers could not be read", cause);
        }
        return credits.isEmpty() ? credits : beyond(credits, deposits.byCustomer(credits.keySet(), day));
    }

    private static Map<UUID, Money> beyond(Map<UUID, Money> credits, Map<UUID, Money> held) {
        Map<UUID, Money> free = new HashMap<>();
        credits.forEach((customer, credit) -> {
            Money left = held.containsKey(customer) ? credit.minus(held.get(customer)) : credit;
            if (left.isPositive()) {
                free.put(customer, left);
            }
        });
        return free;
    }
}
