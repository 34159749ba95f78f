package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.ledger.TaxReport.Charged;
import changeover.billing.ledger.TaxReport.Row;
import changeover.billing.ledger.TaxReport.What;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** The taxes of a year of invoices, credits and payments, against the rows themselves and against a loop over documents. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TaxReportsTest {

    static final Period YEAR =
            new Period(AYearOfMoney.FIRST, AYearOfMoney.FIRST.plusYears(1).minusDays(1));

    @Inject
    ABusiness business;

    @Inject
    AYearOfMoney year;

    @Inject
    TaxReports reports;

    @Inject
    AgroalDataSource datasource;

    private static List<Period> quarters() {
        LocalDate first = YEAR.from();
        return List.of(0, 3, 6, 9).stream()
                .map(month -> new Period(
                        first.plusMonths(month), first.plusMonths(month + 3L).minusDays(1)))
                .toList();
    }

    @Test
    void the_year_is_what_its_documents_say() {
        for (long seed : new long[] {7, 11}) {
            business.in(business.quebec(), () -> {
                year.goesBy(seed);
                TaxReport report = reports.of(YEAR);
                for (Row row : report.rows()) {
                    String where =
                            " from invoice_tax t join invoice_issue s on s.invoice_id = t.invoice_id where t.region = '"
                                    + row.key().region() + "' and t.code = '"
                                    + row.key().code() + "' and t.percent = "
                                    + row.key().percent().toPlainString() + " and s.kind ";
                    assertEquals(
                            sum("t.amount_minor", where + "<> 'credit'"),
                            row.invoiced().tax().minor());
                    assertEquals(
                            sum("t.base_minor", where + "<> 'credit'"),
                            row.invoiced().base().minor());
                    assertEquals(
                            sum("t.amount_minor", where + "= 'credit'"),
                            row.credited().tax().minor());
                    assertEquals(
                            sum("t.base_minor", where + "= 'credit'"),
                            row.credited().base().minor());
                }
                assertEquals(
                        sum("tax_minor", " from invoice_issue where kind <> 'credit'")
                                - sum("tax_minor", " from invoice_issue where kind = 'credit'"),
                        report.tax(Row::net).minor());
                assertTrue(report.tax(Row::credited).isPositive()
                        && report.tax(Row::paid).isPositive());
            });
        }
    }

    @Test
    void what_was_paid_of_it_is_what_a_loop_over_documents_finds() {
        business.in(business.quebec(), () -> {
            year.goesBy(23);
            for (Period period : quarters()) {
                assertEquals(
                        PaidByHand.taxes(datasource, period.until())
                                - PaidByHand.taxes(datasource, period.from().minusDays(1)),
                        reports.of(period).tax(Row::paid).minor(),
                        period.toString());
            }
        });
    }

    @Test
    void quarters_are_the_year_and_lists_are_their_figures() {
        business.in(business.quebec(), () -> {
            year.goesBy(31);
            TaxReport whole = reports.of(YEAR);
            for (Function<Row, Charged> column :
                    List.<Function<Row, Charged>>of(Row::invoiced, Row::credited, Row::net, Row::paid)) {
                long quarters = quarters().stream()
                        .mapToLong(one -> reports.of(one).tax(column).minor())
                        .sum();
                assertEquals(whole.tax(column).minor(), quarters);
            }
            for (Row row : whole.rows()) {
                assertEquals(row.invoiced(), listed(row, Set.of(What.INVOICED)));
                assertEquals(row.credited(), listed(row, Set.of(What.CREDITED)));
                assertEquals(row.net(), listed(row, Set.of(What.INVOICED, What.CREDITED)));
                assertEquals(row.paid(), listed(row, Set.of(What.PAID)));
            }
            assertEquals(0, checked());
        });
    }

    @Test
    void a_release_of_money_leaves_what_was_paid_before_as_it_was() {
        for (long seed = 40; seed < 43; seed++) {
            long once = seed;
            business.in(business.quebec(), () -> {
                year.goesBy(once);
                Period half = new Period(YEAR.from(), YEAR.from().plusMonths(6));
                Money before = reports.of(half).tax(Row::paid);
                year.settleAll(YEAR.until());
                assertEquals(before, reports.of(half).tax(Row::paid));
            });
        }
    }

    @Test
    void a_day_in_spring_asks_for_the_winter() {
        assertEquals(
                new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 3, 31)),
                Period.lastQuarter(LocalDate.of(2026, 6, 30)));
        assertEquals(
                new Period(LocalDate.of(2025, 10, 1), LocalDate.of(2025, 12, 31)),
                Period.lastQuarter(LocalDate.of(2026, 1, 1)));
    }

    private Charged listed(Row row, Set<What> whats) {
        return reports.documents(YEAR, row.key(), whats).stream()
                .map(TaxReports.Document::part)
                .reduce(Charged.nothing(row.invoiced().tax().currency()), Charged::plus);
    }

    private long checked() {
        try (var connection = datasource.getConnection()) {
            LedgerChecks.Found found = LedgerChecks.taxes(connection);
            assertTrue(found.rows() > 50);
            return found.bad();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    private long sum(String column, String from) {
        return Long.parseLong(business.one("select coalesce(sum(" + column + "), 0)" + from));
    }
}
