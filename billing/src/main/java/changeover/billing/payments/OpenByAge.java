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

/** The open documents behind the ages of what is owed, and the credits kept for customers. */
@ApplicationScoped
public class OpenByAge {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** @param open what is still to be paid of it at the end of the day */
    public record Item(
            UUID id, String label, UUID customerId, String customer, LocalDate day, LocalDate dueDay, Money open) {

        /** The same with another amount. */
        public Item with(Money other) {
            return new Item(id, label, customerId, customer, day, dueDay, other);
        }
    }

    /** Due first comes first; no age is every age. */
    public List<Item> on(LocalDate day, @Nullable Age age) {
        Currency currency = businesses.current().currency();
        List<Item> items = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(OpenSql.OPEN + """
                        select i.invoice_id, i.label, i.customer_id, coalesce(c.name, ''), i.day, i.due_day, i.open_minor
                          from item i left join customer c on c.id = i.customer_id
                         where i.open_minor > 0 and ?::date - i.due_day between ? and ?
                         order by i.due_day, i.series, i.number""")) {
            Owed.bindDays(select, day);
            select.setObject(OpenSql.DAYS + 1, day);
            select.setInt(OpenSql.DAYS + 2, age == null ? Integer.MIN_VALUE : age.least());
            select.setInt(OpenSql.DAYS + 3, age == null ? Integer.MAX_VALUE : age.most());
            ResultSet row = select.executeQuery();
            while (row.next()) {
                items.add(new Item(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        row.getObject(3, UUID.class),
                        row.getString(4),
                        row.getObject(5, LocalDate.class),
                        row.getObject(6, LocalDate.class),
                        new Money(row.getLong(7), currency)));
            }
            return items;
        } catch (SQLException cause) {
            throw new IllegalStateException("the open documents could not be listed", cause);
        }
    }
}
