package changeover.billing.pricing;

import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads what was written of prices, with the rules behind them. */
public final class PriceRows {

    private PriceRows() {}

    /** The whole book. */
    public static PriceBook book(Connection connection) throws SQLException {
        return PriceBook.of(written(connection, null), rules(connection), terms(connection));
    }

    /** The same for these parts, with labour and travel. */
    static PriceBook book(Connection connection, Collection<String> parts) throws SQLException {
        return PriceBook.of(written(connection, parts), rules(connection), terms(connection));
    }

    static List<PriceRow> written(Connection connection, @Nullable Collection<String> parts) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select p.item_kind, p.item_code, t.fits_key, p.price_minor, p.cost_minor, p.currency, p.valid_from
                  from price p
                  left join part t on t.tenant_id = p.tenant_id and t.code = p.item_code and p.item_kind = 'part'
                 where ?::text[] is null or p.item_kind <> 'part' or p.item_code = any (?)
                 order by p.item_kind, p.item_code, p.valid_from""")) {
            var codes = parts == null ? null : connection.createArrayOf("text", parts.toArray());
            select.setArray(1, codes);
            select.setArray(2, codes);
            List<PriceRow> rows = new ArrayList<>();
            ResultSet row = select.executeQuery();
            while (row.next()) {
                Currency currency = Currency.getInstance(row.getString(6));
                rows.add(new PriceRow(
                        ItemKind.of(row.getString(1)),
                        row.getString(2),
                        row.getString(3),
                        money(row.getObject(4, Long.class), currency),
                        money(row.getObject(5, Long.class), currency),
                        row.getObject(7, LocalDate.class)));
            }
            return rows;
        }
    }

    /** Many prices at once; the same item and day again is replaced. */
    static int write(Connection connection, List<PriceRow> rows) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into price (item_kind, item_code, price_minor, cost_minor, currency, valid_from)
                select * from unnest(?::text[], ?::text[], ?::bigint[], ?::bigint[], ?::text[], ?::date[])
                on conflict (tenant_id, item_kind, item_code, valid_from) do update
                  set price_minor = excluded.price_minor, cost_minor = excluded.cost_minor""")) {
            column(insert, 1, "text", rows, row -> row.kind().code());
            column(insert, 2, "text", rows, PriceRow::code);
            column(
                    insert,
                    3,
                    "bigint",
                    rows,
                    row -> row.price() == null ? null : row.price().minor());
            column(
                    insert,
                    4,
                    "bigint",
                    rows,
                    row -> row.cost() == null ? null : row.cost().minor());
            column(insert, 5, "text", rows, PriceRow::currency);
            column(insert, 6, "date", rows, row -> row.from().toString());
            return insert.executeUpdate();
        }
    }

    /** The items whose price of that very day says something else and was charged on an issued line until the next price began. */
    static Set<PriceRow.Item> otherPriceCharged(Connection connection, List<PriceRow> rows) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select distinct w.kind, w.code
                  from unnest(?::text[], ?::text[], ?::bigint[], ?::date[]) as w (kind, code, minor, day)
                  join price p on p.item_kind = w.kind and p.item_code = w.code and p.valid_from = w.day
                   and p.price_minor is distinct from w.minor
                  left join lateral (
                    select min(n.valid_from) as day from price n
                     where n.item_kind = w.kind and n.item_code = w.code and n.valid_from > w.day) next on true
                 where exists (
                   select 1 from invoice_line l
                     join invoice_issue s on s.tenant_id = l.tenant_id and s.invoice_id = l.invoice_id and s.kind <> 'credit'
                    where l.kind = w.kind and l.item_code = w.code and l.day >= w.day
                      and l.day < coalesce(next.day, 'infinity'))""")) {
            column(select, 1, "text", rows, row -> row.kind().code());
            column(select, 2, "text", rows, PriceRow::code);
            column(
                    select,
                    3,
                    "bigint",
                    rows,
                    row -> row.price() == null ? null : row.price().minor());
            column(select, 4, "date", rows, row -> row.from().toString());
            Set<PriceRow.Item> charged = new HashSet<>();
            ResultSet row = select.executeQuery();
            while (row.next()) {
                charged.add(new PriceRow.Item(ItemKind.of(row.getString(1)), row.getString(2)));
            }
            return charged;
        }
    }

    private static void column(
            PreparedStatement insert,
            int at,
            String type,
            List<PriceRow> rows,
            Function<PriceRow, @Nullable Object> value)
            throws SQLException {
        @Nullable Object[] column = rows.stream().map(value).toArray();
        insert.setArray(at, insert.getConnection().createArrayOf(type, column));
    }

    static MarkUps rules(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select scope, item, cost_from_minor, percent, step_minor, currency, valid_from from mark_up
                 order by scope, item, valid_from, cost_from_minor""")) {
            List<MarkUp> rules = new ArrayList<>();
            ResultSet row = select.executeQuery();
            while (row.next()) {
                Currency currency = Currency.getInstance(row.getString(6));
                rules.add(new MarkUp(
                        MarkUp.Scope.of(row.getString(1)),
                        row.getString(2),
                        new Money(row.getLong(3), currency),
                        row.getBigDecimal(4),
                        new Money(row.getLong(5), currency),
                        row.getObject(7, LocalDate.class)));
            }
            return new MarkUps(rules);
        }
    }

    private static List<LabourTerms> terms(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select valid_from, step_minutes, minimum_minutes from labour_terms order by valid_from")) {
            List<LabourTerms> terms = new ArrayList<>();
            ResultSet row = select.executeQuery();
            while (row.next()) {
                terms.add(new LabourTerms(row.getObject(1, LocalDate.class), row.getInt(2), row.getInt(3)));
            }
            return terms;
        }
    }

    private static @Nullable Money money(@Nullable Long minor, Currency currency) {
        return minor == null ? null : new Money(minor, currency);
    }
}
