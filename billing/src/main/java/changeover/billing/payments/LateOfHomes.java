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
import java.util.List;
import java.util.UUID;

/** What those who pay for some homes are late with on a day: one question, however many homes. */
@ApplicationScoped
public class LateOfHomes {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /**
     * A payer of a home.
     *
     * @param late everything of theirs whose day of payment has passed; nought when nothing is
     * @param days since the oldest of it was to be paid
     */
    public record Payer(UUID homeId, UUID customerId, Money late, int days) {}

    public List<Payer> of(Collection<UUID> homes, LocalDate day) {
        Currency currency = businesses.current().currency();
        List<Payer> payers = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(OpenSql.OPEN + """
                        , late as (
                          select customer_id, sum(open_minor)::bigint as minor, max(?::date - due_day) as days
                            from item where open_minor > 0 and due_day < ?::date group by customer_id)
                        select distinct p.home_id, p.customer_id, coalesce(l.minor, 0), coalesce(l.days, 0)
                          from home_part p left join late l on l.customer_id = p.customer_id
                         where p.home_id = any (?) and p.part = 'pays' and p.from_day <= ?::date
                           and (p.until_day is null or p.until_day > ?::date)""")) {
            Owed.bindDays(select, day, OpenSql.DAYS + 2);
            select.setArray(OpenSql.DAYS + 3, connection.createArrayOf("uuid", homes.toArray()));
            select.setObject(OpenSql.DAYS + 4, day);
            select.setObject(OpenSql.DAYS + 5, day);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                payers.add(new Payer(
                        row.getObject(1, UUID.class),
                        row.getObject(2, UUID.class),
                        new Money(row.getLong(3), currency),
                        row.getInt(4)));
            }
            return payers;
        } catch (SQLException cause) {
            throw new IllegalStateException("what the payers of homes are late with could not be read", cause);
        }
    }
}
