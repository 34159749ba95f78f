package changeover.billing.payments;

import changeover.billing.invoices.DocumentKind;
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
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Documents as lists: where each stands on a day, how many stand where, and which may be issued. A discarded draft is on no
 * list.
 */
@ApplicationScoped
public class InvoiceLists {

    /** Every document with its standing, at the end of the day. */
    private static final String STANDING = OpenSql.OPEN + """
            , standing as (
              select i.id, i.kind, s.label, i.customer_id, i.home_id, i.agreement_id, i.visit_id, s.series, s.number,
                     coalesce(s.day, i.may_issue_from) as day, s.due_day, i.currency,
                     coalesce(s.total_minor, i.subtotal_minor) as amount_minor, coalesce(o.open_minor, 0) as open_minor,
                     case when s.id is null and exists (
                            select 1 from review_hold r where r.tenant_id = i.tenant_id and r.visit_id = i.visit_id and not exists (
                              select 1 from review_answer a where a.tenant_id = r.tenant_id and a.hold_id = r.id)) then 'review'
                          when s.id is null and i.awaits_first_visit then 'awaiting'
                          when s.id is null and exists (
                            select 1 from invoice_line l where l.tenant_id = i.tenant_id and l.invoice_id = i.id
                               and l.unit_price_minor is null and l.coverage <> 'included') then 'unpriced'
                          when s.id is null and i.subtotal_minor = 0 then 'nothing'
                          when s.id is null and i.may_issue_from > ?::date then 'later'
                          when s.id is null then 'ready'
                          when s.kind = 'credit' then 'credit'
                          when o.credited_minor > 0 and o.credited_minor >= o.total_minor then 'credited'
                          when coalesce(o.open_minor, 0) = 0 and o.given_up_minor > 0 then 'given_up'
                          when coalesce(o.open_minor, 0) = 0 then 'paid'
                          when s.due_day < ?::date then 'late'
                          else 'open' end as stands
                from invoice i
                left join invoice_issue s on s.tenant_id = i.tenant_id and s.invoice_id = i.id
                left join item o on o.invoice_id = i.id
               where not exists (
                 select 1 from invoice_discard x where x.tenant_id = i.tenant_id and x.invoice_id = i.id))
            """;

    private static final int DAYS = OpenSql.DAYS + 2;

    private static final String ON_ALL_PAGES = " count(*) over (), sum(case when t.stands in ('open', 'late')"
            + " then t.open_minor else t.amount_minor end) over () ";

    /** After what is asked of them: the documents of a filter. */
    private static final String CHOSEN = """

             from standing t
             left join customer c on c.id = t.customer_id
             left join home h on h.id = t.home_id
            where (cardinality(?::text[]) = 0 or t.stands = any (?::text[]))
              and (?::uuid is null or t.customer_id = ?)
              and (?::uuid is null or t.home_id = ? or exists (
                    select 1 from invoice_line l where l.invoice_id = t.id and l.home_id = ?))
              and (?::uuid is null or t.agreement_id = ?)
              and (?::uuid is null or t.visit_id = ? or exists (
                    select 1 from invoice_line l where l.invoice_id = t.id and l.visit_id = ?))
              and (?::text is null or strpos(lower(coalesce(t.label, '')), lower(?)) > 0
                   or strpos(lower(coalesce(c.name, '')), lower(?)) > 0)
            """;

    @Inject
    AgroalDataSource datasource;

    /** A page of documents, the newest first. */
    public List<InvoiceRow> rows(InvoiceFilter filter, LocalDate day) {
        return listed(filter, day, "0, 0").rows();
    }

    /**
     * A page of documents with how many the filter finds on all its pages.
     *
     * @param amount what stands on the rows of all pages, what is open of those to be paid; null on a page without rows
     */
    public record Listed(
            List<InvoiceRow> rows, int documents, @Nullable Money amount) {}

    /** The same as {@link #rows} with the count and the sum of all pages, by one statement. */
    public Listed listed(InvoiceFilter filter, LocalDate day) {
        return listed(filter, day, ON_ALL_PAGES);
    }

    private Listed listed(InvoiceFilter filter, LocalDate day, String onAllPages) {
        List<InvoiceRow> rows = new ArrayList<>();
        int documents = 0;
        @Nullable Money amount = null;
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(STANDING + """
                        select t.id, t.kind, t.label, t.customer_id, coalesce(c.name, ''), t.home_id,
                               coalesce(h.street, ''), t.day, t.due_day, t.amount_minor, t.open_minor, t.currency, t.stands,
                        """ + onAllPages + CHOSEN + """
                         order by t.day desc, t.number desc nulls last, t.id desc
                         offset ? limit ?""")) {
            int at = bind(connection, select, filter, day);
            select.setInt(++at, filter.skip());
            select.setInt(++at, filter.limit());
            ResultSet row = select.executeQuery();
            while (row.next()) {
                rows.add(row(row));
                documents = row.getInt(14);
                amount = new Money(row.getLong(15), Currency.getInstance(row.getString(12)));
            }
            return new Listed(rows, documents, amount);
        } catch (SQLException cause) {
            throw new IllegalStateException("the documents could not be listed", cause);
        }
    }

    private static InvoiceRow row(ResultSet row) throws SQLException {
        Currency currency = Currency.getInstance(row.getString(12));
        return new InvoiceRow(
                row.getObject(1, UUID.class),
                DocumentKind.of(row.getString(2)),
                row.getString(3),
                row.getObject(4, UUID.class),
                row.getString(5),
                row.getObject(6, UUID.class),
                row.getString(7),
                row.getObject(8, LocalDate.class),
                row.getObject(9, LocalDate.class),
                new Money(row.getLong(10), currency),
                new Money(row.getLong(11), currency),
                Standing.of(row.getString(13)));
    }

    /** How many documents stand where, and their amounts: before tax on drafts, what is open on issued ones. */
    public Map<Standing, Sum> sums(LocalDate day, Currency currency) {
        Map<Standing, Sum> sums = new EnumMap<>(Standing.class);
        for (Standing standing : Standing.values()) {
            sums.put(standing, new Sum(0, Money.zero(currency)));
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(STANDING + """
                        select stands, count(*), sum(case when label is null or stands = 'credit' then amount_minor
                                                          else open_minor end)
                          from standing group by stands""")) {
            bindDays(select, day);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                sums.put(Standing.of(row.getString(1)), new Sum(row.getInt(2), new Money(row.getLong(3), currency)));
            }
            return sums;
        } catch (SQLException cause) {
            throw new IllegalStateException("the documents could not be counted", cause);
        }
    }

    public record Sum(int documents, Money amount) {}

    /** The drafts a billing run on that day issues, the oldest day first. */
    public List<UUID> ready(LocalDate day) {
        List<UUID> ids = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(
                        STANDING + "select id from standing where stands = 'ready' order by day, id")) {
            bindDays(select, day);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                ids.add(row.getObject(1, UUID.class));
            }
            return ids;
        } catch (SQLException cause) {
            throw new IllegalStateException("the drafts could not be listed", cause);
        }
    }

    private static int bind(Connection connection, PreparedStatement select, InvoiceFilter filter, LocalDate day)
            throws SQLException {
        int at = bindDays(select, day);
        Object[] stands = filter.standings().stream().map(Standing::code).toArray();
        select.setArray(++at, connection.createArrayOf("text", stands));
        select.setArray(++at, connection.createArrayOf("text", stands));
        for (UUID id : new UUID[] {filter.customerId(), filter.customerId()}) {
            select.setObject(++at, id);
        }
        for (int times = 0; times < 3; times++) {
            select.setObject(++at, filter.homeId());
        }
        for (int times = 0; times < 2; times++) {
            select.setObject(++at, filter.agreementId());
        }
        for (int times = 0; times < 3; times++) {
            select.setObject(++at, filter.visitId());
        }
        for (int times = 0; times < 3; times++) {
            select.setString(++at, filter.sought());
        }
        return at;
    }

    private static int bindDays(PreparedStatement select, LocalDate day) throws SQLException {
        for (int at = 1; at <= DAYS; at++) {
            select.setObject(at, day);
        }
        return DAYS;
    }
}
