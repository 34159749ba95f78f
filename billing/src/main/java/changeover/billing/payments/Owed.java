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
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What is still to be paid at the end of a day, by document, by customer and by age. */
@ApplicationScoped
public class Owed {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** What the business is owed: one statement for the page of today. */
    public OwedBy all(LocalDate day) {
        return owed(day, null, true).getFirst();
    }

    /** Customers who owe or have a credit, the oldest debt first. */
    public List<OwedBy> byCustomer(LocalDate day) {
        return owed(day, null, false);
    }

    /** One customer's; nought everywhere when nothing was ever issued or paid. */
    public OwedBy of(UUID customer, LocalDate day) {
        return owed(day, customer, true).getFirst();
    }

    /** Open documents of a customer, the one due first before the others. */
    public List<OpenItem> open(UUID customer, LocalDate day) {
        return items("where customer_id = ? and open_minor > 0 order by due_day, series, number", customer, day);
    }

    /** Documents of a customer that are not paid in full, those that were given up too. */
    List<OpenItem> unpaid(UUID customer, LocalDate day) {
        return items("where customer_id = ? and (open_minor > 0 or given_up_minor > 0)", customer, day);
    }

    /** How one document stands; empty while it is a draft, and for a credit note. */
    public Optional<OpenItem> item(UUID invoice, LocalDate day) {
        return items("where invoice_id = ?", invoice, day).stream().findFirst();
    }

    private List<OpenItem> items(String where, UUID id, LocalDate day) {
        Currency currency = businesses.current().currency();
        List<OpenItem> items = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(OpenSql.OPEN_OF_FEW
                        + "select invoice_id, customer_id, label, day, due_day, total_minor, credited_minor, paid_minor,"
                        + " given_up_minor, open_minor from item " + where)) {
            bindDays(select, day);
            select.setObject(OpenSql.DAYS + 1, id);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                items.add(new OpenItem(
                        row.getObject(1, UUID.class),
                        row.getObject(2, UUID.class),
                        row.getString(3),
                        row.getObject(4, LocalDate.class),
                        row.getObject(5, LocalDate.class),
                        new Money(row.getLong(6), currency),
                        new Money(row.getLong(7), currency),
                        new Money(row.getLong(8), currency),
                        new Money(row.getLong(9), currency),
                        new Money(row.getLong(10), currency)));
            }
            return items;
        } catch (SQLException cause) {
            throw new IllegalStateException("what is owed could not be read", cause);
        }
    }

    private List<OwedBy> owed(LocalDate day, @Nullable UUID customer, boolean together) {
        Currency currency = businesses.current().currency();
        List<OwedBy> owed = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select =
                        connection.prepareStatement((customer == null ? OpenSql.OPEN : OpenSql.OPEN_OF_FEW)
                                + AgeingSql.of(customer != null, together))) {
            bindDays(select, day, OpenSql.DAYS + AgeingSql.DAYS);
            if (customer != null) {
                select.setObject(OpenSql.DAYS + AgeingSql.DAYS + 1, customer);
            }
            ResultSet row = select.executeQuery();
            while (row.next()) {
                owed.add(OwedBy.of(row, currency));
            }
            return owed;
        } catch (SQLException cause) {
            throw new IllegalStateException("what is owed could not be read", cause);
        }
    }

    static void bindDays(PreparedStatement select, LocalDate day) throws SQLException {
        bindDays(select, day, OpenSql.DAYS);
    }

    static void bindDays(PreparedStatement select, LocalDate day, int times) throws SQLException {
        for (int at = 1; at <= times; at++) {
            select.setObject(at, day);
        }
    }
}
