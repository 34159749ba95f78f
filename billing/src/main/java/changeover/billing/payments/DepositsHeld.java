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
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What of deposits was still kept for their work at the end of a day: taken by then, not yet applied and not given back. */
@ApplicationScoped
public class DepositsHeld {

    private static final String HELD = """
            select d.id, d.number, p.customer_id, coalesce(c.name, ''), p.day, d.words, p.amount_minor, k.minor
              from deposit d
              join payment p on p.tenant_id = d.tenant_id and p.id = d.payment_id
              left join customer c on c.tenant_id = p.tenant_id and c.id = p.customer_id
              cross join lateral (
                select (p.amount_minor - coalesce((
                          select sum(a.amount_minor) from payment_allocation a
                           where a.tenant_id = p.tenant_id and a.payment_id = p.id and a.day <= ?), 0) - coalesce((
                          select sum(r.amount_minor) from deposit_return b
                            join payment r on r.tenant_id = b.tenant_id and r.id = b.refund_id and r.day <= ?
                           where b.tenant_id = d.tenant_id and b.deposit_id = d.id and not exists (
                             select 1 from payment_undoing u
                              where u.tenant_id = r.tenant_id and u.payment_id = r.id and u.day <= ?)), 0))::bigint as minor) k
             where p.day <= ? and k.minor > 0 and not exists (
               select 1 from payment_undoing u where u.tenant_id = p.tenant_id and u.payment_id = p.id and u.day <= ?)""";

    private static final String ORDERED = " order by p.day, d.number";

    private static final int DAYS = 5;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** @param left what was still kept of the amount */
    public record Held(
            UUID id,
            long number,
            UUID customerId,
            String customer,
            LocalDate day,
            String words,
            Money amount,
            Money left) {}

    /** The same together for each customer who has some. */
    public Map<UUID, Money> byCustomer(LocalDate day) {
        Map<UUID, Money> sums = new HashMap<>();
        on(day).forEach(one -> sums.merge(one.customerId(), one.left(), Money::plus));
        return sums;
    }

    /** The same for those among a few who have some. */
    Map<UUID, Money> byCustomer(Collection<UUID> customers, LocalDate day) {
        Map<UUID, Money> sums = new HashMap<>();
        read(day, customers).forEach(one -> sums.merge(one.customerId(), one.left(), Money::plus));
        return sums;
    }

    /** What is kept for one customer. */
    public Money of(UUID customer, LocalDate day) {
        return read(day, List.of(customer)).stream()
                .map(Held::left)
                .reduce(Money.zero(businesses.current().currency()), Money::plus);
    }

    public List<Held> on(LocalDate day) {
        return read(day, null);
    }

    private List<Held> read(LocalDate day, @Nullable Collection<UUID> customers) {
        Currency currency = businesses.current().currency();
        List<Held> held = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(
                        HELD + (customers == null ? "" : " and p.customer_id = any (?)") + ORDERED)) {
            Owed.bindDays(select, day, DAYS);
            if (customers != null) {
                select.setArray(DAYS + 1, connection.createArrayOf("uuid", customers.toArray()));
            }
            ResultSet row = select.executeQuery();
            while (row.next()) {
                held.add(new Held(
                        row.getObject(1, UUID.class),
                        row.getLong(2),
                        row.getObject(3, UUID.class),
                        row.getString(4),
                        row.getObject(5, LocalDate.class),
                        row.getString(6),
                        new Money(row.getLong(7), currency),
                        new Money(row.getLong(8), currency)));
            }
            return held;
        } catch (SQLException cause) {
            throw new IllegalStateException("the deposits could not be read", cause);
        }
    }
}
