package changeover.billing.payments;

import changeover.contracts.money.Money;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * A customer's credit pays what is open, the oldest first: money that paid no document yet, and money that a credit note
 * has set free again.
 */
@ApplicationScoped
class Settling {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Owed owed;

    @Inject
    StillOpen still;

    private record Free(UUID paymentId, long minor) {}

    /** @return how much of the credit was used */
    Money settle(UUID customer, LocalDate day) {
        Money before = owed.of(customer, day).open();
        try (Connection connection = datasource.getConnection()) {
            release(connection, customer, day);
            for (Free free : free(connection, customer, day)) {
                Money amount = new Money(free.minor(), before.currency());
                for (NewPayment.Part part :
                        Spread.over(amount, still.of(customer, day)).parts()) {
                    allocate(
                            connection,
                            free.paymentId(),
                            part.invoiceId(),
                            part.amount().minor(),
                            day);
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the credit could not be used", cause);
        }
        return before.minus(owed.of(customer, day).open());
    }

    /**
     * What was paid beyond a credited invoice's rest no longer counts for that invoice; the latest payment first. What was set
     * free on a later day already is not set free once more.
     */
    static void release(Connection connection, UUID customer, LocalDate day) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(OpenSql.OPEN_OF_FEW + """
                        select a.payment_id, sum(a.amount_minor)::bigint, i.invoice_id,
                               i.paid_minor + i.credited_minor - i.total_minor - later.minor
                          from item i
                          join lateral (
                            select -coalesce(sum(l.amount_minor), 0)::bigint as minor from payment_allocation l
                              left join payment_undoing x on x.payment_id = l.payment_id
                             where l.invoice_id = i.invoice_id and l.day > ?::date and l.amount_minor < 0 and x.id is null) later
                            on true
                          join payment_allocation a on a.invoice_id = i.invoice_id
                          left join payment_undoing u on u.payment_id = a.payment_id and u.day <= ?::date
                         where i.customer_id = ? and u.id is null
                           and i.paid_minor + i.credited_minor - later.minor > i.total_minor
                         group by 1, 3, 4 having sum(a.amount_minor) > 0
                         order by i.invoice_id, max(a.day) desc, a.payment_id desc""")) {
            Owed.bindDays(select, day);
            select.setObject(OpenSql.DAYS + 1, day);
            select.setObject(OpenSql.DAYS + 2, day);
            select.setObject(OpenSql.DAYS + 3, customer);
            ResultSet row = select.executeQuery();
            UUID invoice = null;
            long surplus = 0;
            while (row.next()) {
                UUID own = row.getObject(3, UUID.class);
                if (!own.equals(invoice)) {
                    invoice = own;
                    surplus = row.getLong(4);
                }
                long freed = Math.min(surplus, row.getLong(2));
                surplus -= freed;
                if (freed > 0) {
                    allocate(connection, row.getObject(1, UUID.class), own, -freed, day);
                }
            }
        }
    }

    /** Refunds are taken from the oldest free money first, so that what went back cannot pay anything, nor on an earlier day. */
    private static List<Free> free(Connection connection, UUID customer, LocalDate day) throws SQLException {
        List<Free> free = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select p.id, p.kind, p.amount_minor - coalesce((
                         select sum(a.amount_minor) from payment_allocation a
                          where a.tenant_id = p.tenant_id and a.payment_id = p.id), 0)
                  from payment p
                  left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
                 where p.customer_id = ? and (p.day <= ? or p.kind = 'refund') and u.id is null
                   and not exists (select 1 from deposit d where d.tenant_id = p.tenant_id and d.payment_id = p.id)
                   and not exists (select 1 from deposit_return b where b.tenant_id = p.tenant_id and b.refund_id = p.id)
                 order by p.kind desc, p.day, p.id""")) {
            select.setObject(1, customer);
            select.setObject(2, day);
            ResultSet row = select.executeQuery();
            long refunded = 0;
            while (row.next()) {
                long minor = row.getLong(3);
                if (row.getString(2).equals("refund")) {
                    refunded += minor;
                    continue;
                }
                long taken = Math.min(refunded, minor);
                refunded -= taken;
                if (minor > taken) {
                    free.add(new Free(row.getObject(1, UUID.class), minor - taken));
                }
            }
        }
        return free;
    }

    private static void allocate(Connection connection, UUID payment, UUID invoice, long minor, LocalDate day)
            throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(
                "insert into payment_allocation (payment_id, invoice_id, amount_minor, day) values (?, ?, ?, ?)")) {
            insert.setObject(1, payment);
            insert.setObject(2, invoice);
            insert.setLong(3, minor);
            insert.setObject(4, day);
            insert.executeUpdate();
        }
    }
}
