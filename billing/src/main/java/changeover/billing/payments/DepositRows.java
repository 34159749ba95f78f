package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

/** Deposits as they stand: what came in, what was applied and given back, and what is left. */
final class DepositRows {

    private static final String ROWS = """
            with standing as (
              select d.id, d.payment_id, d.number, p.customer_id, d.home_id, d.agreement_id, d.call_id, p.day, p.way, p.reference,
                     d.words, p.amount_minor, coalesce((
                       select sum(a.amount_minor) from payment_allocation a
                        where a.tenant_id = p.tenant_id and a.payment_id = p.id), 0)::bigint as applied,
                     coalesce((
                       select sum(r.amount_minor) from deposit_return b
                         join payment r on r.tenant_id = b.tenant_id and r.id = b.refund_id
                        where b.tenant_id = d.tenant_id and b.deposit_id = d.id and not exists (
                          select 1 from payment_undoing u where u.tenant_id = r.tenant_id and u.payment_id = r.id)), 0)::bigint
                       as back,
                     exists (select 1 from payment_undoing u where u.tenant_id = p.tenant_id and u.payment_id = p.id) as gone
                from deposit d join payment p on p.tenant_id = d.tenant_id and p.id = d.payment_id)
            select s.id, s.payment_id, s.number, s.customer_id, coalesce(c.name, ''), s.home_id, coalesce(h.street, ''),
                   s.agreement_id, s.call_id, s.day, s.way, s.reference, s.words, s.amount_minor, s.applied, s.back,
                   case when s.gone then 0 else s.amount_minor - s.applied - s.back end
              from standing s
              left join customer c on c.id = s.customer_id
              left join home h on h.id = s.home_id
             where\s""";

    private DepositRows() {}

    static List<Deposit> read(Connection connection, Currency currency, String where, Object... asked)
            throws SQLException {
        List<Deposit> deposits = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(ROWS + where + " order by s.day, s.number")) {
            for (int at = 0; at < asked.length; at++) {
                select.setObject(at + 1, asked[at]);
            }
            ResultSet row = select.executeQuery();
            while (row.next()) {
                deposits.add(of(row, currency));
            }
        }
        return List.copyOf(deposits);
    }

    private static Deposit of(ResultSet row, Currency currency) throws SQLException {
        return new Deposit(
                row.getObject(1, UUID.class),
                row.getObject(2, UUID.class),
                row.getLong(3),
                row.getObject(4, UUID.class),
                row.getString(5),
                row.getObject(6, UUID.class),
                row.getString(7),
                row.getObject(8, UUID.class),
                row.getObject(9, UUID.class),
                row.getObject(10, LocalDate.class),
                Way.of(Objects.requireNonNull(row.getString(11))),
                row.getString(12),
                Objects.requireNonNull(row.getString(13)),
                new Money(row.getLong(14), currency),
                new Money(row.getLong(15), currency),
                new Money(row.getLong(16), currency),
                new Money(row.getLong(17), currency));
    }

    /** Receipts are numbered one after the other: whoever takes the next number waits for the one before. */
    static UUID insert(Connection connection, UUID payment, NewDeposit taken) throws SQLException {
        try (PreparedStatement lock = connection.prepareStatement(
                        "select pg_advisory_xact_lock(hashtextextended('deposit ' || current_tenant()::text, 0))");
                PreparedStatement insert = connection.prepareStatement("""
                        insert into deposit (payment_id, number, home_id, agreement_id, call_id, words)
                        values (?, (select coalesce(max(number), 0) + 1 from deposit), ?, ?, ?, ?) returning id""")) {
            lock.executeQuery();
            insert.setObject(1, payment);
            insert.setObject(2, taken.homeId());
            insert.setObject(3, taken.agreementId());
            insert.setObject(4, taken.callId());
            insert.setString(5, taken.words().strip());
            ResultSet row = insert.executeQuery();
            row.next();
            return row.getObject(1, UUID.class);
        }
    }

    static void returned(Connection connection, UUID deposit, UUID refund) throws SQLException {
        try (PreparedStatement insert =
                connection.prepareStatement("insert into deposit_return (deposit_id, refund_id) values (?, ?)")) {
            insert.setObject(1, deposit);
            insert.setObject(2, refund);
            insert.executeUpdate();
        }
    }

    /** What of deposits is still kept for their work, of one customer. */
    static Money kept(Connection connection, UUID customer, Currency currency) throws SQLException {
        return Money.sum(
                read(connection, currency, "s.customer_id = ?", customer).stream()
                        .map(Deposit::left)
                        .toList(),
                currency);
    }

    /** The least that was left of a deposit at the end of any day from this one on. */
    static Money leastFrom(Connection connection, Deposit deposit, LocalDate day) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                with moved as (
                  select day, amount_minor as minor from payment where id = ?
                  union all select day, -amount_minor from payment_allocation where payment_id = ?
                  union all
                  select r.day, -r.amount_minor from deposit_return b join payment r on r.id = b.refund_id where b.deposit_id = ?
                  union all
                  select u.day, r.amount_minor from deposit_return b join payment r on r.id = b.refund_id
                    join payment_undoing u on u.payment_id = r.id where b.deposit_id = ?),
                stood as (select greatest(day, ?) as day, sum(minor) as minor from moved group by 1)
                select coalesce(min(minor), 0)::bigint from (select sum(minor) over (order by day) as minor from stood) s""")) {
            select.setObject(1, deposit.paymentId());
            select.setObject(2, deposit.paymentId());
            select.setObject(3, deposit.id());
            select.setObject(4, deposit.id());
            select.setObject(5, day);
            ResultSet row = select.executeQuery();
            row.next();
            return new Money(row.getLong(1), deposit.amount().currency());
        }
    }

    /** Those of the customers who ever left a deposit. */
    static List<UUID> having(Connection connection, Collection<UUID> customers) throws SQLException {
        List<UUID> having = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select distinct p.customer_id from deposit d join payment p on p.tenant_id = d.tenant_id and p.id = d.payment_id
                 where p.customer_id = any (?) order by 1""")) {
            select.setArray(1, connection.createArrayOf("uuid", customers.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                having.add(row.getObject(1, UUID.class));
            }
        }
        return having;
    }
}
