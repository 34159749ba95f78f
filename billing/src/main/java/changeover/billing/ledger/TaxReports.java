package changeover.billing.ledger;

import changeover.billing.ledger.TaxReport.Charged;
import changeover.billing.ledger.TaxReport.Key;
import changeover.billing.ledger.TaxReport.What;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The taxes of a period, from the frozen rows of what was issued, and the documents behind each figure. */
@ApplicationScoped
public class TaxReports {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** A document behind a figure, with its part in it; a credit note's is below nought where charges are listed too. */
    public record Document(
            UUID id, String label, LocalDate day, UUID customerId, String customer, boolean credit, Charged part) {}

    public TaxReport of(Period period) {
        Currency currency = businesses.current().currency();
        List<TaxReport.Row> rows = new ArrayList<>();
        try (Connection connection = datasource.getConnection()) {
            try (PreparedStatement select = connection.prepareStatement(TaxMoves.SQL + """
                    select region, code, percent, category, max(label_en), max(label_fr),
                           sum(base) filter (where what = 'invoiced'), sum(tax) filter (where what = 'invoiced'),
                           sum(base) filter (where what = 'credited'), sum(tax) filter (where what = 'credited'),
                           sum(base) filter (where what = 'paid'), sum(tax) filter (where what = 'paid'),
                           sum(base) filter (where what = 'given_up'), sum(tax) filter (where what = 'given_up')
                      from moves group by region, code, percent, category
                     order by region, code = 'qst', code, percent, category""")) {
                bind(select, period);
                ResultSet row = select.executeQuery();
                while (row.next()) {
                    rows.add(new TaxReport.Row(
                            new Key(
                                    row.getString(1),
                                    row.getString(2),
                                    row.getBigDecimal(3).stripTrailingZeros(),
                                    row.getString(4)),
                            new Wording(row.getString(5), row.getString(6)),
                            charged(row, 7, currency),
                            charged(row, 9, currency),
                            charged(row, 11, currency),
                            charged(row, 13, currency)));
                }
            }
            return new TaxReport(period, currency, List.copyOf(rows), sales(connection, period, currency));
        } catch (SQLException cause) {
            throw new IllegalStateException("the taxes could not be summed", cause);
        }
    }

    private static TaxReport.Sales sales(Connection connection, Period period, Currency currency) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select sum(subtotal_minor) filter (where kind <> 'credit'),
                       sum(subtotal_minor) filter (where kind = 'credit')
                  from invoice_issue where day between ? and ?""")) {
            bind(select, period);
            ResultSet row = select.executeQuery();
            row.next();
            return new TaxReport.Sales(new Money(row.getLong(1), currency), new Money(row.getLong(2), currency));
        }
    }

    /**
     * The documents behind a figure, in the order of their days; {@code INVOICED} and {@code CREDITED} together are the net.
     *
     * @param key of one tax, or null for all: then a document's amounts are those of all its taxes, and its base counts once a tax
     */
    public List<Document> documents(Period period, @Nullable Key key, Collection<What> whats) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(TaxMoves.SQL + """
                        select m.invoice_id, s.label, s.day, s.customer_id, coalesce(c.name, ''), s.kind = 'credit',
                               sum(m.base), sum(m.tax)
                          from moves m
                          join invoice_issue s on s.invoice_id = m.invoice_id
                          left join customer c on c.id = s.customer_id
                         where m.what = any (?) and (?::text is null
                               or m.region = ? and m.code = ? and m.percent = ? and m.category = ?)
                         group by m.invoice_id, s.label, s.day, s.customer_id, c.name, s.kind, s.series, s.number
                         order by s.day, s.series, s.number""")) {
            bind(select, period);
            select.setArray(3, connection.createArrayOf("text", codes(whats).toArray()));
            select.setString(4, key == null ? null : key.region());
            select.setString(5, key == null ? null : key.region());
            select.setString(6, key == null ? null : key.code());
            select.setBigDecimal(7, key == null ? null : key.percent());
            select.setString(8, key == null ? null : key.category());
            return documents(select, whats.size() > 1);
        } catch (SQLException cause) {
            throw new IllegalStateException("the documents of a tax could not be listed", cause);
        }
    }

    /** All documents that bear a day of the period, taxed or not: their base is what they ask before tax. */
    public List<Document> sold(Period period, Collection<What> whats) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select s.invoice_id, s.label, s.day, s.customer_id, coalesce(c.name, ''), s.kind = 'credit',
                               s.subtotal_minor, s.tax_minor
                          from invoice_issue s
                          left join customer c on c.id = s.customer_id
                         where s.day between ? and ?
                           and case s.kind when 'credit' then 'credited' else 'invoiced' end = any (?)
                         order by s.day, s.series, s.number""")) {
            bind(select, period);
            select.setArray(3, connection.createArrayOf("text", codes(whats).toArray()));
            return documents(select, whats.size() > 1);
        } catch (SQLException cause) {
            throw new IllegalStateException("the documents of a period could not be listed", cause);
        }
    }

    /** @param netted whether credit notes count below nought */
    private List<Document> documents(PreparedStatement select, boolean netted) throws SQLException {
        Currency currency = businesses.current().currency();
        List<Document> documents = new ArrayList<>();
        ResultSet row = select.executeQuery();
        while (row.next()) {
            boolean credit = row.getBoolean(6);
            Charged part = charged(row, 7, currency);
            documents.add(new Document(
                    row.getObject(1, UUID.class),
                    row.getString(2),
                    row.getObject(3, LocalDate.class),
                    row.getObject(4, UUID.class),
                    row.getString(5),
                    credit,
                    netted && credit ? Charged.nothing(currency).minus(part) : part));
        }
        return documents;
    }

    private static Stream<String> codes(Collection<What> whats) {
        return whats.stream().map(what -> what.name().toLowerCase(Locale.ROOT));
    }

    private static void bind(PreparedStatement select, Period period) throws SQLException {
        select.setObject(1, period.from());
        select.setObject(2, period.until());
    }

    private static Charged charged(ResultSet row, int at, Currency currency) throws SQLException {
        return new Charged(new Money(row.getLong(at), currency), new Money(row.getLong(at + 1), currency));
    }
}
