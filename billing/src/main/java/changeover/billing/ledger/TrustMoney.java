package changeover.billing.ledger;

import changeover.billing.tax.TaxQuestion;
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

/** Agreements whose money the law of the place keeps in trust until their first visit is done, with what was paid of each and what deposits keep for it. */
@ApplicationScoped
public class TrustMoney {

    /**
     * Sold, not ended, no visit closed yet. What was paid of a document for several agreements is shared by their lines, to the
     * cent.
     */
    private static final String WAITING = """
            with share as materialized (
              select tenant_id, invoice_id, agreement_id, sum(net_minor)::numeric as own,
                     sum(sum(net_minor)) over (partition by tenant_id, invoice_id) as net,
                     sum(sum(net_minor)) over (partition by tenant_id, invoice_id order by agreement_id nulls last) as until
                from (select l.tenant_id, l.invoice_id, l.net_minor,
                             case when l.kind = 'plan' then l.agreement_id end as agreement_id
                        from invoice_line l
                       where l.invoice_id in (
                         select n.invoice_id from invoice_line n
                          where n.kind = 'plan' and n.agreement_id is not null and (?::uuid is null or n.agreement_id = ?))) l
               group by 1, 2, 3)
            select a.id, a.number, c.name, h.country, h.region, y.day, v.first,
                   (coalesce(p.minor, 0) + coalesce(d.minor, 0))::bigint
              from agreement a
              join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
              join home h on h.tenant_id = a.tenant_id and h.id = a.home_id
              join customer c on c.tenant_id = a.tenant_id and c.id = a.payer_id
              join (select v.tenant_id, v.agreement_id, min(coalesce(t.day, v.window_from)) as first, bool_or(n.id is not null) as begun
                      from visit v
                      left join appointment t on t.tenant_id = v.tenant_id and t.visit_id = v.id
                      left join visit_ending n on n.tenant_id = v.tenant_id and n.visit_id = v.id and n.how = 'closed'
                     where v.agreement_id is not null group by 1, 2) v
                on v.tenant_id = a.tenant_id and v.agreement_id = a.id
              left join (select s.tenant_id, s.agreement_id,
                                sum(round(m.minor * s.until / s.net) - round(m.minor * (s.until - s.own) / s.net)) as minor
                           from (select * from share where agreement_id is not null and net > 0) s
                           join (select l.tenant_id, l.invoice_id, sum(l.amount_minor)::numeric as minor
                                   from payment_allocation l
                                   left join payment_undoing u on u.tenant_id = l.tenant_id and u.payment_id = l.payment_id
                                  where u.id is null group by 1, 2) m
                             on m.tenant_id = s.tenant_id and m.invoice_id = s.invoice_id
                          group by 1, 2) p
                on p.tenant_id = a.tenant_id and p.agreement_id = a.id
              left join (select d.tenant_id, d.agreement_id, sum(p.amount_minor - coalesce(l.minor, 0) - coalesce(b.minor, 0)) as minor
                           from deposit d
                           join payment p on p.tenant_id = d.tenant_id and p.id = d.payment_id
                           left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
                           left join (select tenant_id, payment_id, sum(amount_minor) as minor from payment_allocation group by 1, 2) l
                             on l.tenant_id = p.tenant_id and l.payment_id = p.id
                           left join (select b.tenant_id, b.deposit_id, sum(r.amount_minor) as minor
                                        from deposit_return b
                                        join payment r on r.tenant_id = b.tenant_id and r.id = b.refund_id
                                        left join payment_undoing u on u.tenant_id = r.tenant_id and u.payment_id = r.id
                                       where u.id is null group by 1, 2) b
                             on b.tenant_id = d.tenant_id and b.deposit_id = d.id
                          where u.id is null and d.agreement_id is not null group by 1, 2) d
                on d.tenant_id = a.tenant_id and d.agreement_id = a.id
             where not v.begun and (?::uuid is null or a.id = ?)
               and not exists (select 1 from agreement_ending e where e.tenant_id = a.tenant_id and e.agreement_id = a.id)
             order by a.number""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** @param paid with tax, deposits that are still held included; nought while nothing was */
    public record Held(
            UUID agreementId,
            long number,
            String customer,
            LocalDate sold,
            LocalDate firstVisit,
            Money paid,
            TrustRule rule) {}

    /** All that the rule speaks of. */
    public List<Held> all() {
        return read(null);
    }

    public Optional<Held> of(UUID agreement) {
        return read(agreement).stream().findFirst();
    }

    private List<Held> read(@Nullable UUID agreement) {
        Currency currency = businesses.current().currency();
        List<Held> held = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(WAITING)) {
            for (int at = 1; at <= 4; at++) {
                select.setObject(at, agreement);
            }
            ResultSet row = select.executeQuery();
            while (row.next()) {
                UUID id = row.getObject(1, UUID.class);
                long number = row.getLong(2);
                String customer = row.getString(3);
                LocalDate sold = row.getObject(6, LocalDate.class);
                LocalDate first = row.getObject(7, LocalDate.class);
                Money paid = new Money(row.getLong(8), currency);
                TrustRule.of(TaxQuestion.region(row.getString(4), row.getString(5)), sold, first)
                        .ifPresent(rule -> held.add(new Held(id, number, customer, sold, first, paid, rule)));
            }
            return held;
        } catch (SQLException cause) {
            throw new IllegalStateException("what is to be kept in trust could not be read", cause);
        }
    }
}
