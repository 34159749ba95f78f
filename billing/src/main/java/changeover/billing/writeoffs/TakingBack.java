package changeover.billing.writeoffs;

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
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What was given up is taken back, the latest first, where money came after all or a credit note lessened the document. */
@ApplicationScoped
class TakingBack {

    /** What of document {@code s} is given up beyond its rest. */
    private static final String BEYOND = """
            (select sum(w.amount_minor) from write_off w where w.invoice_id = s.invoice_id)
            - greatest(0, s.total_minor
                - coalesce((select sum(c.total_minor) from invoice_issue c where c.credits_id = s.invoice_id), 0)
                - coalesce((select sum(a.amount_minor) from payment_allocation a
                     where a.invoice_id = s.invoice_id and not exists (
                       select 1 from payment_undoing u where u.payment_id = a.payment_id)), 0))""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /**
     * Opens again as much of the customer's written-off documents as the money pays, the oldest document first.
     *
     * @return the day from which all of it is open; null when nothing was taken back
     */
    @Nullable
    LocalDate forMoney(UUID customer, Money money, LocalDate day, UUID payment) {
        Currency currency = money.currency();
        LocalDate latest = null;
        try (Connection connection = datasource.getConnection()) {
            Money left = money;
            for (UUID invoice : ofCustomer(connection, customer)) {
                for (WriteOffRows.Standing one : WriteOffRows.standing(connection, invoice, currency)) {
                    if (left.isPositive()) {
                        Money part = left.compareTo(one.left()) < 0 ? left : one.left();
                        LocalDate on = later(day, one.day());
                        WriteOffRows.insert(
                                connection,
                                new WriteOffRows.Move(invoice, on, part.negated(), null, one.id(), payment, null));
                        latest = latest == null ? on : later(latest, on);
                        left = left.minus(part);
                    }
                }
            }
            return latest;
        } catch (SQLException cause) {
            throw new IllegalStateException("what was given up could not be taken back", cause);
        }
    }

    /** Money that came before the day on which the documents it pays were given up: so much of them was never lost. */
    void forPaid(List<UUID> paid, LocalDate day, UUID payment) {
        Currency currency = businesses.current().currency();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select s.invoice_id, %s from invoice_issue s
                         where s.invoice_id = any (?) and exists (
                           select 1 from write_off w where w.invoice_id = s.invoice_id)""".formatted(BEYOND))) {
            select.setArray(1, connection.createArrayOf("uuid", paid.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                Money beyond = new Money(row.getLong(2), currency);
                takeBack(connection, row.getObject(1, UUID.class), payment, null, beyond, day);
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("what was given up could not be taken back", cause);
        }
    }

    /** A credit note gives back what was given up before: what would be given up beyond the rest is taken back. */
    void forCredits(List<UUID> credits, LocalDate day) {
        Currency currency = businesses.current().currency();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select s.invoice_id, n.invoice_id, %s
                          from invoice_issue n join invoice_issue s on s.invoice_id = n.credits_id
                         where n.invoice_id = any (?)
                           and exists (select 1 from write_off w where w.invoice_id = s.invoice_id)
                         order by n.series, n.number""".formatted(BEYOND))) {
            select.setArray(1, connection.createArrayOf("uuid", credits.toArray()));
            ResultSet row = select.executeQuery();
            Set<UUID> done = new LinkedHashSet<>();
            while (row.next()) {
                UUID invoice = row.getObject(1, UUID.class);
                if (done.add(invoice)) {
                    takeBack(
                            connection,
                            invoice,
                            null,
                            row.getObject(2, UUID.class),
                            new Money(row.getLong(3), currency),
                            day);
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("what was given up could not be taken back", cause);
        }
    }

    private static void takeBack(
            Connection connection,
            UUID invoice,
            @Nullable UUID payment,
            @Nullable UUID credit,
            Money beyond,
            LocalDate day)
            throws SQLException {
        Money left = beyond;
        for (WriteOffRows.Standing one : WriteOffRows.standing(connection, invoice, beyond.currency())) {
            if (left.isPositive()) {
                Money part = left.compareTo(one.left()) < 0 ? left : one.left();
                WriteOffRows.insert(
                        connection,
                        new WriteOffRows.Move(
                                invoice, later(day, one.day()), part.negated(), null, one.id(), payment, credit));
                left = left.minus(part);
            }
        }
    }

    private static Set<UUID> ofCustomer(Connection connection, UUID customer) throws SQLException {
        Set<UUID> invoices = new LinkedHashSet<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select s.invoice_id from invoice_issue s join write_off w on w.invoice_id = s.invoice_id
                 where s.customer_id = ? group by s.invoice_id, s.due_day, s.series, s.number
                having sum(w.amount_minor) > 0 order by s.due_day, s.series, s.number""")) {
            select.setObject(1, customer);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                invoices.add(row.getObject(1, UUID.class));
            }
        }
        return invoices;
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
