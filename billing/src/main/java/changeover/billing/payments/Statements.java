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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

/** Everything that moved a customer's balance in the business's books, in order, with the balance after each. */
@ApplicationScoped
public class Statements {

    private static final String MOVES = """
            select day, what, id, said, minor, way, stands, customer_id from (
              select customer_id, day, case kind when 'credit' then 'credit' else 'invoice' end as what, invoice_id as id,
                     label as said, case kind when 'credit' then -total_minor else total_minor end as minor, 1 as turn,
                     null as way, false as stands
                from invoice_issue where customer_id = ?
              union all
              select p.customer_id, p.day, p.kind, p.id, p.reference, case p.kind when 'payment' then -amount_minor else amount_minor end, 2,
                     p.way, u.id is null
                from payment p
                left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
               where p.customer_id = ?
              union all
              select p.customer_id, u.day, case u.how when 'bounced' then 'returned' else 'undone' end, p.id, p.reference,
                     case p.kind when 'payment' then p.amount_minor else -p.amount_minor end, 3, p.way, false
                from payment_undoing u
                join payment p on p.tenant_id = u.tenant_id and p.id = u.payment_id
               where p.customer_id = ?
              union all
              select s.customer_id, w.day, case when w.amount_minor > 0 then 'given-up' else 'taken-back' end, w.invoice_id,
                     s.label, -w.amount_minor, 4, null, false
                from write_off w
                join invoice_issue s on s.tenant_id = w.tenant_id and s.invoice_id = w.invoice_id
               where s.customer_id = ?
              union all
              select customer_id, since, 'from-before', id, words, amount_minor, 0, null, false
                from opening_balance where customer_id = ?) moves
             where day <= ? order by day, turn, said, id""";

    /** How often the customer is asked for, before the last day. */
    private static final int CUSTOMERS = 5;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /**
     * The first row brings forward the balance before {@code from}.
     *
     * @param until last day, in
     */
    public List<StatementRow> of(UUID customer, LocalDate from, LocalDate until) {
        Money nought = Money.zero(businesses.current().currency());
        return read(customer, from, until).getOrDefault(customer, List.of(StatementRow.before(from, nought)));
    }

    private Map<UUID, List<StatementRow>> read(UUID customer, LocalDate from, LocalDate until) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(MOVES)) {
            for (int at = 1; at <= CUSTOMERS; at++) {
                select.setObject(at, customer);
            }
            select.setObject(CUSTOMERS + 1, until);
            return rows(select, from, businesses.current().currency());
        } catch (SQLException cause) {
            throw new IllegalStateException("the statement could not be read", cause);
        }
    }

    /** Movements in their order, as lines with the balance after each, those before the first day brought forward. */
    static Map<UUID, List<StatementRow>> rows(PreparedStatement select, LocalDate from, Currency currency)
            throws SQLException {
        Map<UUID, Money> balances = new LinkedHashMap<>();
        Map<UUID, List<StatementRow>> rows = new LinkedHashMap<>();
        try (ResultSet row = select.executeQuery()) {
            while (row.next()) {
                UUID whose = row.getObject(8, UUID.class);
                LocalDate day = row.getObject(1, LocalDate.class);
                Money amount = new Money(row.getLong(5), currency);
                Money balance = balances.merge(whose, amount, Money::plus);
                List<StatementRow> theirs = rows.computeIfAbsent(whose, _ -> new ArrayList<>());
                if (!day.isBefore(from)) {
                    theirs.add(new StatementRow(
                            day,
                            row.getString(2),
                            row.getObject(3, UUID.class),
                            row.getString(4),
                            row.getString(6) == null ? null : Way.of(row.getString(6)),
                            row.getBoolean(7),
                            amount,
                            balance));
                }
            }
        }
        rows.forEach((whose, theirs) -> {
            Money before = theirs.isEmpty()
                    ? Objects.requireNonNull(balances.get(whose))
                    : theirs.getFirst().balance().minus(theirs.getFirst().amount());
            theirs.addFirst(StatementRow.before(from, before));
        });
        return rows;
    }
}
