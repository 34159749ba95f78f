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
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * What customers are told they owe: a debt that the business gave up in its books is still owed, and a deposit pays nothing before
 * it is applied; until then it is said beside the balance.
 */
@ApplicationScoped
public class StatementsToCustomers {

    private static final String MOVES = """
            with plain as (
              select p.* from payment p
               where not exists (select 1 from deposit d where d.tenant_id = p.tenant_id and d.payment_id = p.id)
                 and not exists (select 1 from deposit_return b where b.tenant_id = p.tenant_id and b.refund_id = p.id)),
            applied as (
              select p.customer_id, p.id, p.reference, p.way, a.invoice_id, a.day, sum(a.amount_minor) as minor
                from deposit d
                join payment p on p.tenant_id = d.tenant_id and p.id = d.payment_id
                join payment_allocation a on a.tenant_id = p.tenant_id and a.payment_id = p.id
               group by 1, 2, 3, 4, 5, 6)
            select day, what, id, said, minor, way, stands, customer_id from (
              select customer_id, day, case kind when 'credit' then 'credit' else 'invoice' end as what, invoice_id as id,
                     label as said, case kind when 'credit' then -total_minor else total_minor end as minor, 1 as turn,
                     null as way, false as stands
                from invoice_issue
              union all
              select p.customer_id, p.day, p.kind, p.id, p.reference, case p.kind when 'payment' then -amount_minor else amount_minor end, 2,
                     p.way, u.id is null
                from plain p left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
              union all
              select p.customer_id, u.day, case u.how when 'bounced' then 'returned' else 'undone' end, p.id, p.reference,
                     case p.kind when 'payment' then p.amount_minor else -p.amount_minor end, 3, p.way, false
                from payment_undoing u join plain p on p.tenant_id = u.tenant_id and p.id = u.payment_id
              union all
              select a.customer_id, a.day, case when a.minor > 0 then 'deposit-applied' else 'deposit-freed' end, a.invoice_id,
                     s.label, -a.minor, 4, null, false
                from applied a join invoice_issue s on s.invoice_id = a.invoice_id
               where a.minor <> 0
              union all
              select a.customer_id, u.day, case u.how when 'bounced' then 'returned' else 'undone' end, a.id, a.reference,
                     sum(a.minor), 5, a.way, false
                from applied a join payment_undoing u on u.payment_id = a.id
               group by 1, 2, 3, 4, 5, a.way
              union all
              select customer_id, since, 'from-before', id, words, amount_minor, 0, null, false from opening_balance) moves
             where customer_id is not null and day <= ? order by day, turn, said, id""";

    private static final String GIVEN_UP = """
            select s.customer_id, sum(w.amount_minor)::bigint
              from write_off w join invoice_issue s on s.tenant_id = w.tenant_id and s.invoice_id = w.invoice_id
             where s.customer_id is not null and w.day <= ? group by 1""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    @Inject
    DepositsHeld deposits;

    /**
     * @param rows the first brings forward the balance before the period
     * @param deposits kept for work to come at the period's end
     * @param givenUp what of the balance the business no longer expects
     */
    public record Theirs(List<StatementRow> rows, Money deposits, Money givenUp) {

        public Theirs {
            rows = List.copyOf(rows);
        }

        public Money opening() {
            return rows.getFirst().balance();
        }

        public Money closing() {
            return rows.getLast().balance();
        }

        /** Whether a batch writes to them: something moved, a deposit is kept, or more is open than was given up. */
        public boolean speaks() {
            return rows.size() > 1 || !deposits.isZero() || !closing().equals(givenUp);
        }
    }

    /**
     * Of every customer whose balance ever moved until then, or who left a deposit: three questions to the database.
     *
     * @param until last day, in
     */
    public Map<UUID, Theirs> all(LocalDate from, LocalDate until) {
        Currency currency = businesses.current().currency();
        Money nought = Money.zero(currency);
        Map<UUID, Money> kept = deposits.byCustomer(until);
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(MOVES)) {
            select.setObject(1, until);
            Map<UUID, List<StatementRow>> rows = Statements.rows(select, from, currency);
            Map<UUID, Money> givenUp = givenUp(connection, until, currency);
            Set<UUID> customers = new HashSet<>(rows.keySet());
            customers.addAll(kept.keySet());
            Map<UUID, Theirs> all = new LinkedHashMap<>();
            customers.stream()
                    .sorted()
                    .forEach(one -> all.put(
                            one,
                            new Theirs(
                                    rows.getOrDefault(one, List.of(StatementRow.before(from, nought))),
                                    kept.getOrDefault(one, nought),
                                    givenUp.getOrDefault(one, nought))));
            return all;
        } catch (SQLException cause) {
            throw new IllegalStateException("the statements could not be read", cause);
        }
    }

    private static Map<UUID, Money> givenUp(Connection connection, LocalDate until, Currency currency)
            throws SQLException {
        Map<UUID, Money> sums = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(GIVEN_UP)) {
            select.setObject(1, until);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                sums.put(row.getObject(1, UUID.class), new Money(row.getLong(2), currency));
            }
            return sums;
        }
    }
}
