package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.ledger.ASoldPlan.Sold;
import changeover.billing.ledger.EarnedOn.Plan;
import changeover.billing.payments.Owed;
import changeover.contracts.PostgresForTests;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The books of a year in double entry, against what is open, kept, prepaid and taxed on the last day of each quarter. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class JournalTest {

    static final LocalDate FIRST = AYearOfMoney.FIRST;

    @Inject
    ABusiness business;

    @Inject
    AYearOfMoney year;

    @Inject
    ASoldPlan plans;

    @Inject
    Journal journal;

    @Inject
    TaxReports taxes;

    @Inject
    Earned earned;

    @Inject
    Owed owed;

    @Inject
    AgroalDataSource datasource;

    private static long sum(List<JournalEntry> entries, String role) {
        return entries.stream()
                .flatMap(entry -> entry.postings().stream())
                .filter(one -> one.role().startsWith(role))
                .mapToLong(one -> one.amount().minor())
                .sum();
    }

    @Test
    void every_entry_balances_and_every_quarter_ties_to_what_is_open_kept_and_taxed() {
        for (long seed : new long[] {3, 5}) {
            business.in(business.quebec(), () -> {
                year.goesBy(seed);
                long receivable = 0;
                long deposits = 0;
                for (int quarter = 0; quarter < 4; quarter++) {
                    LocalDate from = FIRST.plusMonths(3L * quarter);
                    Period period = new Period(from, from.plusMonths(3).minusDays(1));
                    List<JournalEntry> entries = journal.of(period);
                    assertTrue(entries.stream().allMatch(JournalEntry::balances));
                    assertTrue(entries.size() > 20);
                    receivable += sum(entries, "receivable");
                    deposits += sum(entries, "deposits");
                    assertEquals(owed.all(period.until()).open().minor(), receivable);
                    assertEquals(owed.all(period.until()).credit().minor(), -deposits);
                    TaxReport report = taxes.of(period);
                    assertEquals(report.tax(TaxReport.Row::net).minor(), -sum(entries, "tax "));
                    assertEquals(report.sales().net().minor(), -sum(entries, "revenue-visit"));
                }
                assertEquals(0, checked());
            });
        }
    }

    @Test
    void what_a_plan_prepaid_is_deferred_until_it_is_earned() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Ida Roe", 30, 0);
            UUID spring = plans.visit(sold, "plan", 60, null);
            plans.visit(sold, "plan", 60, null);
            plans.invoiced(sold, ASoldPlan.FIRST, 1, "124.50");
            plans.draft(sold, ASoldPlan.FIRST.plusMonths(8), 2, "124.50");
            plans.closed(sold, spring, LocalDate.of(2026, 5, 4), "done");
            long deferred = 0;
            long unbilled = 0;
            for (int month = 0; month < 14; month++) {
                LocalDate from = ASoldPlan.FIRST.plusMonths(month);
                Period period = new Period(from, from.plusMonths(1).minusDays(1));
                List<JournalEntry> entries = journal.of(period);
                assertTrue(entries.stream().allMatch(JournalEntry::balances));
                deferred += sum(entries, "deferred");
                unbilled += sum(entries, "unbilled");
                EarnedOn on = earned.on(period.until());
                assertEquals(on.sum(Plan::prepaid).minor(), -deferred, period.toString());
                assertEquals(on.sum(Plan::ahead).minor(), unbilled, period.toString());
            }
            assertEquals(0, checked());
        });
    }

    @Test
    void the_file_bears_the_businesss_own_codes() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("=Ida Roe", 0, 0);
            plans.invoiced(sold, ASoldPlan.FIRST, 1, "249.00");
            Period day = new Period(ASoldPlan.FIRST, ASoldPlan.FIRST);
            String file = new String(
                    JournalFile.of(journal.of(day), Map.of("receivable", "1100"), Locale.ENGLISH),
                    StandardCharsets.UTF_8);
            List<String> lines = file.lines().toList();
            assertEquals("date,entry,document,role,account,debit,credit,currency,words", lines.getFirst());
            assertTrue(lines.get(1).startsWith("2026-04-01,1,"), lines.get(1));
            assertTrue(lines.get(1).contains(",receivable,1100,286.29,,CAD,\"Invoice, =Ida Roe\""), lines.get(1));
            assertTrue(lines.get(2).contains(",deferred,,,249.00,CAD,"), lines.get(2));
            assertTrue(file.contains(",tax gst 123456789 RT0001,,,12.45,CAD,"), file);
            assertTrue(file.contains(",tax qst 1234567890 TQ0001,,,24.84,CAD,"), file);
            assertTrue(file.contains(",revenue-plan,,,0.68,CAD,"), file);
            assertTrue(file.contains("\r\n"));
        });
    }

    private long checked() {
        try (var connection = datasource.getConnection()) {
            return LedgerChecks.journal(connection, Currency.getInstance("CAD")).bad();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
