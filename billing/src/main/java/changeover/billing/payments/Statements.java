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

/** Everything that moved a customer's balance, in order, with the balance after each. */
@ApplicationScoped
public class Statements {

    private static final String MOVES = """
            select day, what, id, said, minor, way, stands from (
              select day, case kind when 'credit' then 'credit' else 'invoice' end as what, invoice_id as id,
                     label as said, case kind when 'credit' then -total_minor else total_minor end as minor, 1 as turn,
                     null as way, false as stands
                from invoice_issue where customer_id = ?
              union all
              select p.day, p.kind, p.id, p.reference, case p.kind when 'payment' then -amount_minor else amount_minor end, 2,
                     p.way, u.id is null
                from payment p
                left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
               where p.customer_id = ?
              union all
              select u.day, case u.how when 'bounced' then 'returned' else 'undone' end, p.id, p.reference,
                     case p.kind when 'payment' then p.amount_minor else -p.amount_minor end, 3, p.way, false
                from payment_undoing u
                join payment p on p.tenant_id = u.tenant_id and p.id = u.payment_id where p.customer_id = ?
              union all
              select w.day, case when w.amount_minor > 0 then 'given-up' else 'taken-back' end, w.invoice_id, s.label,
                     -w.amount_minor, 4, null, false
                from write_off w
                join invoice_issue s on s.tenant_id = w.tenant_id and s.invoice_id = w.invoice_id
               where s.customer_id = ?) moves
             where day <= ? order by day, turn, said, id""";

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
        Currency currency = businesses.current().currency();
        Money balance = Money.zero(currency);
        List<StatementRow> rows = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(MOVES)) {
            select.setObject(1, customer);
            select.setObject(2, customer);
            select.setObject(3, customer);
            select.setObject(4, customer);
            select.setObject(5, until);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                LocalDate day = row.getObject(1, LocalDate.class);
                Money amount = new Money(row.getLong(5), currency);
                balance = balance.plus(amount);
                if (!day.isBefore(from)) {
                    rows.add(new StatementRow(
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
        } catch (SQLException cause) {
            throw new IllegalStateException("the statement could not be read", cause);
        }
        Money before = rows.isEmpty()
                ? balance
                : rows.getFirst().balance().minus(rows.getFirst().amount());
        rows.addFirst(new StatementRow(from, "before", null, null, null, false, before, before));
        return List.copyOf(rows);
    }
}
