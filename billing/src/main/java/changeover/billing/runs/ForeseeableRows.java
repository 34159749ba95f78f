package changeover.billing.runs;

import changeover.billing.runs.Foreseeable.Kind;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads what is said of drafts before a run, for all of them at once. */
final class ForeseeableRows {

    /**
     * What is usual is the middle amount before tax of what was issued earlier: to the customer for visits, of the plan in as
     * many parts for plans. Two papers of one visit are no second visit.
     */
    private static final String DRAFTS = """
            with asked as materialized (
              select d.id, d.position, i.customer_id, i.home_id, i.kind, i.visit_id, i.may_issue_from,
                     i.instalments, i.subtotal_minor, i.currency, a.plan_id
                from unnest(?::uuid[]) with ordinality as d(id, position)
                join invoice i on i.tenant_id = current_tenant() and i.id = d.id
                left join agreement a on a.tenant_id = i.tenant_id and a.id = i.agreement_id),
            line as materialized (
              select l.invoice_id, count(*)::int as lines, bool_and(l.work = 'fee') as fees,
                     bool_or(l.coverage = 'billable' and l.net_minor = 0) as at_nought,
                     (array_agg(l.words_en order by l.position))[1] as words_en,
                     (array_agg(l.words_fr order by l.position))[1] as words_fr
                from invoice_line l join asked d on d.id = l.invoice_id
               where l.tenant_id = current_tenant() group by l.invoice_id),
            of_customer as materialized (
              select s.customer_id, percentile_disc(0.5) within group (order by s.subtotal_minor) as minor
                from invoice_issue s
               where s.tenant_id = current_tenant() and s.kind = 'visit' and s.subtotal_minor > 0
               group by s.customer_id having count(*) >= ?),
            of_plan as materialized (
              select a.plan_id, i.instalments, percentile_disc(0.5) within group (order by s.subtotal_minor) as minor
                from invoice_issue s
                join invoice i on i.tenant_id = s.tenant_id and i.id = s.invoice_id
                join agreement a on a.tenant_id = i.tenant_id and a.id = i.agreement_id
               where s.tenant_id = current_tenant() and s.kind = 'plan' and s.subtotal_minor > 0
               group by a.plan_id, i.instalments having count(*) >= ?),
            visited as materialized (
              select i.home_id, i.may_issue_from, count(distinct coalesce(i.visit_id, i.id)) as visits
                from invoice i
               where i.tenant_id = current_tenant() and i.kind = 'visit'
                 and (i.home_id, i.may_issue_from) in (select home_id, may_issue_from from asked where kind = 'visit')
                 and not exists (
                   select 1 from invoice_discard x where x.tenant_id = i.tenant_id and x.invoice_id = i.id)
                 and not exists (
                   select 1 from invoice_line l
                    where l.tenant_id = i.tenant_id and l.invoice_id = i.id and l.work = 'fee')
               group by i.home_id, i.may_issue_from)
            select d.id, d.customer_id, c.name, coalesce(trim(c.email), '') <> '', d.kind, coalesce(l.fees, false),
                   coalesce(h.street, ''), d.may_issue_from, coalesce(l.words_en, ''), coalesce(l.words_fr, ''),
                   coalesce(l.lines, 0), d.subtotal_minor, d.currency,
                   case d.kind when 'visit' then u.minor when 'plan' then p.minor end,
                   coalesce(v.visits, 0) > 1, coalesce(l.at_nought, false)
              from asked d
              join customer c on c.tenant_id = current_tenant() and c.id = d.customer_id
              left join home h on h.tenant_id = current_tenant() and h.id = d.home_id
              left join line l on l.invoice_id = d.id
              left join of_customer u on u.customer_id = d.customer_id
              left join of_plan p on p.plan_id = d.plan_id and p.instalments is not distinct from d.instalments
              left join visited v
                on d.kind = 'visit' and v.home_id = d.home_id and v.may_issue_from = d.may_issue_from
             order by d.position""";

    private ForeseeableRows() {}

    static List<Foreseeable> of(Connection connection, List<UUID> drafts) throws SQLException {
        List<Foreseeable> found = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(DRAFTS)) {
            select.setArray(1, connection.createArrayOf("uuid", drafts.toArray()));
            select.setInt(2, Foreseeable.EARLIER);
            select.setInt(3, Foreseeable.EARLIER);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                found.add(draft(row));
            }
        }
        return found;
    }

    private static Foreseeable draft(ResultSet row) throws SQLException {
        boolean fees = row.getBoolean(6);
        Kind kind = fees && row.getString(5).equals("visit")
                ? Kind.FEE
                : Kind.of(row.getString(5)).orElseThrow();
        Currency currency = Currency.getInstance(row.getString(13));
        @Nullable Long usual = row.getObject(14, Long.class);
        return new Foreseeable(
                row.getObject(1, UUID.class),
                row.getObject(2, UUID.class),
                row.getString(3),
                row.getBoolean(4),
                kind,
                row.getString(7),
                row.getObject(8, LocalDate.class),
                new Wording(row.getString(9), row.getString(10)),
                Math.max(0, row.getInt(11) - 1),
                Foreseeable.odd(
                        kind,
                        new Money(row.getLong(12), currency),
                        usual == null || kind == Kind.FEE ? null : new Money(usual, currency),
                        row.getBoolean(15) && kind == Kind.VISIT,
                        row.getBoolean(16) && kind != Kind.CREDIT));
    }
}
