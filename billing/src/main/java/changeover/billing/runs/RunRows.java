package changeover.billing.runs;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads runs and what became of their drafts. */
final class RunRows {

    /** Totals come as texts of currency and cents, so that a run is one row. */
    private static final String RUNS = """
            select r.id, r.day, r.made_by, r.made_at, e.how, e.made_at, r.drafts, coalesce(b.issued, 0),
                   coalesce(b.joined, 0), coalesce(b.refused, 0), coalesce(p.papers, 0), t.totals
              from billing_run r
              left join billing_run_end e on e.tenant_id = r.tenant_id and e.run_id = r.id
              left join lateral (
                select sum(issued) as issued, sum(joined) as joined, sum(refused) as refused
                  from billing_run_batch b where b.tenant_id = r.tenant_id and b.run_id = r.id) b on true
              left join lateral (
                select count(*) as papers from document_order o
                  join invoice_issue s on s.tenant_id = o.tenant_id and s.invoice_id = o.of_id
                 where o.tenant_id = r.tenant_id and s.batch = r.id) p on true
              left join lateral (
                select array_agg(of.total order by of.total) as totals from (
                  select s.currency || ' ' || sum(case s.kind when 'credit' then -s.total_minor else s.total_minor end)
                    as total from invoice_issue s where s.tenant_id = r.tenant_id and s.batch = r.id
                   group by s.currency) of) t on true
             where r.tenant_id = current_tenant()
            """;

    private RunRows() {}

    private interface Reading<T> {
        T of(ResultSet row) throws SQLException;
    }

    static List<BillingRun> read(AgroalDataSource database, String which, Object fact) {
        return all(database, RUNS + which, RunRows::run, fact.toString());
    }

    static List<RunDocument> issued(AgroalDataSource database, UUID run, int skip, int count) {
        return all(
                database,
                """
                select s.invoice_id, s.label, s.customer_id, coalesce(c.name, ''), s.total_minor, s.currency
                  from invoice_issue s
                  left join customer c on c.tenant_id = s.tenant_id and c.id = s.customer_id
                 where s.tenant_id = current_tenant() and s.batch = ?::uuid
                 order by s.series, s.number offset ?::int limit ?::int""",
                row -> new RunDocument(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        row.getObject(3, UUID.class),
                        row.getString(4),
                        new Money(row.getLong(5), Currency.getInstance(row.getString(6)))),
                run.toString(),
                String.valueOf(skip),
                String.valueOf(count));
    }

    static List<RunLeft> left(AgroalDataSource database, UUID run, int skip, int count) {
        return all(
                database,
                """
                select f.invoice_id, c.name, f.code, f.why_en, f.why_fr
                  from billing_run_refusal f
                  left join invoice i on i.tenant_id = f.tenant_id and i.id = f.invoice_id
                  left join customer c on c.tenant_id = i.tenant_id and c.id = i.customer_id
                 where f.tenant_id = current_tenant() and f.run_id = ?::uuid order by f.id offset ?::int limit ?::int""",
                row -> new RunLeft(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        row.getString(3),
                        new Wording(row.getString(4), row.getString(5))),
                run.toString(),
                String.valueOf(skip),
                String.valueOf(count));
    }

    private static <T> List<T> all(AgroalDataSource database, String sql, Reading<T> reading, String... facts) {
        List<T> found = new ArrayList<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement(sql)) {
            for (int at = 0; at < facts.length; at++) {
                select.setString(at + 1, facts[at]);
            }
            ResultSet row = select.executeQuery();
            while (row.next()) {
                found.add(reading.of(row));
            }
            return found;
        } catch (SQLException cause) {
            throw new IllegalStateException("the runs could not be read", cause);
        }
    }

    private static BillingRun run(ResultSet row) throws SQLException {
        String how = row.getString(5);
        Timestamp ended = row.getTimestamp(6);
        return new BillingRun(
                row.getObject(1, UUID.class),
                row.getObject(2, LocalDate.class),
                row.getObject(3, UUID.class),
                row.getTimestamp(4).toInstant(),
                how == null ? BillingRun.State.RUNNING : BillingRun.State.valueOf(how.toUpperCase(Locale.ROOT)),
                ended == null ? null : ended.toInstant(),
                row.getInt(7),
                row.getInt(8),
                row.getInt(9),
                row.getInt(10),
                row.getInt(11),
                totals(row.getArray(12)));
    }

    private static List<Money> totals(java.sql.@Nullable Array totals) throws SQLException {
        if (totals == null) {
            return List.of();
        }
        return Arrays.stream((String[]) totals.getArray())
                .map(one -> one.split(" "))
                .map(one -> new Money(Long.parseLong(one[1]), Currency.getInstance(one[0])))
                .toList();
    }
}
