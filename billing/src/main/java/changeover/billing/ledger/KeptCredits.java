package changeover.billing.ledger;

import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/**
 * What customers paid beyond what they owe, at the end of a day: what is open of their documents less their balance. It is the
 * customer's money and no one's receivable, so at the end of a period it is booked apart.
 */
final class KeptCredits {

    private static final String KEPT = """
            with asked as (select ?::date as day),
            document as (select s.* from invoice_issue s, asked where s.day <= asked.day),
            counted as (
              select p.* from payment p cross join asked
                left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id and u.day <= asked.day
               where p.day <= asked.day and u.id is null),
            paid as (
              select a.tenant_id, a.invoice_id, sum(a.amount_minor) as minor
                from asked, payment_allocation a join counted p on p.tenant_id = a.tenant_id and p.id = a.payment_id
               where a.day <= asked.day group by a.tenant_id, a.invoice_id),
            back as (
              select tenant_id, credits_id as invoice_id, sum(total_minor) as minor
                from document where kind = 'credit' group by tenant_id, credits_id),
            open as (
              select d.tenant_id, d.customer_id,
                     sum(greatest(0, d.total_minor - coalesce(b.minor, 0) - coalesce(p.minor, 0))) as minor
                from document d
                left join back b on b.tenant_id = d.tenant_id and b.invoice_id = d.invoice_id
                left join paid p on p.tenant_id = d.tenant_id and p.invoice_id = d.invoice_id
               where d.kind <> 'credit' group by d.tenant_id, d.customer_id),
            balance as (
              select tenant_id, customer_id, sum(minor) as minor from (
                select tenant_id, customer_id, case kind when 'credit' then -total_minor else total_minor end as minor
                  from document
                union all
                select tenant_id, customer_id, case kind when 'payment' then -amount_minor else amount_minor end
                  from counted) m group by tenant_id, customer_id)
            select b.customer_id, coalesce(c.name, ''), (coalesce(o.minor, 0) - b.minor)::bigint
              from balance b
              left join open o on o.tenant_id = b.tenant_id and o.customer_id = b.customer_id
              left join customer c on c.tenant_id = b.tenant_id and c.id = b.customer_id
             where coalesce(o.minor, 0) <> b.minor order by 2, 1""";

    private KeptCredits() {}

    record Kept(String customer, Money amount) {}

    static Map<UUID, Kept> on(Connection connection, LocalDate day, Currency currency) throws SQLException {
        Map<UUID, Kept> kept = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(KEPT)) {
            select.setObject(1, day);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                kept.put(row.getObject(1, UUID.class), new Kept(row.getString(2), new Money(row.getLong(3), currency)));
            }
        }
        return kept;
    }
}
