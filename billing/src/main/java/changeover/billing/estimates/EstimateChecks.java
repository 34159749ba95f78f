package changeover.billing.estimates;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * What must hold of every estimate: its lines and taxes are its total, its numbers have no gap, a yes came within its days,
 * what its visits were charged stays within the yes, and work and deposits are of its own home, or the one it was made one with, and
 * its own customer.
 */
public final class EstimateChecks {

    private static final String OFFERED = """
            with lines as (
              select tenant_id, estimate_id, sum(net_minor) as minor from estimate_line group by 1, 2),
            taxes as (
              select tenant_id, estimate_id, sum(amount_minor) as minor from estimate_tax group by 1, 2),
            given as (
              select tenant_id, series, count(*) as n, max(number) as last from estimate_offer group by 1, 2),
            charged as (
              select w.tenant_id, w.estimate_id, sum(case s.kind when 'credit' then -l.net_minor else l.net_minor end) as minor
                from estimate_work w
                join invoice_line l on l.tenant_id = w.tenant_id and l.visit_id = w.visit_id
                join invoice_issue s on s.tenant_id = l.tenant_id and s.invoice_id = l.invoice_id
               where not exists (select 1 from estimate_work o where o.tenant_id = w.tenant_id and o.visit_id = w.visit_id
                                    and o.estimate_id <> w.estimate_id)
               group by 1, 2)
            select count(*), count(*) filter (where o.subtotal_minor <> coalesce(l.minor, 0)
                     or o.tax_minor <> coalesce(t.minor, 0) or g.n <> g.last
                     or (a.how = 'accepted' and (a.at at time zone b.zone)::date not between o.day and e.valid_until)
                     or exists (select 1 from estimate_work w join visit v on v.tenant_id = w.tenant_id and v.id = w.visit_id
                                 where w.tenant_id = o.tenant_id and w.estimate_id = o.estimate_id
                                   and ((v.home_id <> e.home_id and not exists (select 1 from home_merge h
                                           where h.tenant_id = v.tenant_id and h.home_id in (v.home_id, e.home_id)
                                             and h.other_id in (v.home_id, e.home_id)))
                                        or a.how is distinct from 'accepted'))
                     or coalesce(m.minor, 0) > coalesce((
                          select x.accepted_minor from estimate_more x where x.tenant_id = o.tenant_id
                             and x.estimate_id = o.estimate_id order by x.id desc limit 1), o.subtotal_minor)
                     or exists (select 1 from estimate_deposit x
                                  join deposit d on d.tenant_id = x.tenant_id and d.id = x.deposit_id
                                  join payment p on p.tenant_id = d.tenant_id and p.id = d.payment_id
                                 where x.tenant_id = o.tenant_id and x.estimate_id = o.estimate_id
                                   and p.customer_id <> e.customer_id))
              from estimate_offer o
              join business b on b.id = o.tenant_id
              join estimate e on e.tenant_id = o.tenant_id and e.id = o.estimate_id
              join given g on g.tenant_id = o.tenant_id and g.series = o.series
              left join lines l on l.tenant_id = o.tenant_id and l.estimate_id = o.estimate_id
              left join charged m on m.tenant_id = o.tenant_id and m.estimate_id = o.estimate_id
              left join taxes t on t.tenant_id = o.tenant_id and t.estimate_id = o.estimate_id
              left join estimate_answer a on a.tenant_id = o.tenant_id and a.estimate_id = o.estimate_id and a.undone_at is null""";

    private EstimateChecks() {}

    /** @param bad how many do not hold; nought is well */
    public record Found(long rows, long bad) {}

    public static Found of(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(OFFERED)) {
            row.next();
            return new Found(row.getLong(1), row.getLong(2));
        }
    }
}
