package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.openings.OpeningBalances;
import changeover.billing.openings.OpeningBalances.Opening;
import changeover.billing.openings.Prepaid;
import changeover.billing.payments.OpenByAge;
import changeover.billing.payments.OpenedBefore;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.takeover.TakeOver;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What was owed and prepaid before the take-over stands in every report that it belongs in, and every period still ties. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OpeningsInTheBooksTest {

    private static final Currency CURRENCY = Currency.getInstance("CAD");

    @Inject
    ABusiness business;

    @Inject
    AYearOfMoney year;

    @Inject
    Journal journal;

    @Inject
    OpeningBalances openings;

    @Inject
    Prepaid prepaid;

    @Inject
    TakeOver takeOver;

    @Inject
    Owed owed;

    @Inject
    OpenByAge documents;

    @Inject
    OpenedBefore before;

    @Inject
    AgroalDataSource datasource;

    @Test
    void every_quarter_ties_with_debts_and_money_from_before() {
        business.in(business.quebec(), () -> {
            year.goesBy(11);
            LocalDate day = AYearOfMoney.FIRST.plusDays(100);
            takeOver.on(day);
            List<UUID> customers = customers();
            for (int at = 0; at < customers.size(); at++) {
                LocalDate since = day.minusDays(50L * at % 170);
                openings.add(List.of(new Opening(
                        customers.get(at), since, Money.ofMinor(1_000L + 7_311L * at, "CAD"), "Old invoice " + at)));
                if (at % 3 == 0) {
                    prepaid.keep(
                            new Prepaid.Ahead(customers.get(at), Money.ofMinor(4_200L + at, "CAD"), "Paid in spring"));
                }
            }
            long receivable = 0;
            long deposits = 0;
            long old = 0;
            for (int quarter = 0; quarter < 4; quarter++) {
                LocalDate from = AYearOfMoney.FIRST.plusMonths(3L * quarter);
                Period period = new Period(from, from.plusMonths(3).minusDays(1));
                List<JournalEntry> entries = journal.of(period);
                assertTrue(entries.stream().allMatch(JournalEntry::balances));
                receivable += sum(entries, "receivable");
                deposits += sum(entries, "deposits");
                old += sum(entries, "before");
                OwedBy all = owed.all(period.until());
                assertEquals(all.open().minor(), receivable, period.toString());
                assertEquals(all.beyond().minus(all.credit()).minor(), deposits, period.toString());
                ages(period.until(), all);
            }
            assertEquals(
                    prepaid.all().stream()
                                    .mapToLong(kept -> kept.ahead().amount().minor())
                                    .sum()
                            - openings.all().stream()
                                    .mapToLong(kept -> kept.opening().amount().minor())
                                    .sum(),
                    old);
            assertEquals(1, entriesOn(day));
            try (var connection = datasource.getConnection()) {
                assertEquals(0, LedgerChecks.journal(connection, CURRENCY).bad());
            } catch (SQLException cause) {
                throw new IllegalStateException(cause);
            }
        });
    }

    /** Every column is the sum of its list, and the columns are what is owed. */
    private void ages(LocalDate day, OwedBy all) {
        Money ages = all.notDue()
                .plus(all.late30())
                .plus(all.late60())
                .plus(all.late90())
                .plus(all.older());
        assertEquals(all.open(), ages);
        long listed = documents.on(day, null).stream()
                        .mapToLong(one -> one.open().minor())
                        .sum()
                + before.on(day, null).stream()
                        .mapToLong(one -> one.open().minor())
                        .sum();
        assertEquals(all.open().minor(), listed);
        OwedBy each = owed.byCustomer(day).stream()
                .filter(one -> !one.open().isZero())
                .findFirst()
                .orElse(all);
        if (each.customerId() != null) {
            assertEquals(each.open(), owed.of(each.customerId(), day).open());
        }
    }

    private long entriesOn(LocalDate day) {
        return journal.of(new Period(day, day)).stream()
                .filter(entry -> entry.words().en().startsWith("Owed from before"))
                .count();
    }

    private List<UUID> customers() {
        try (var connection = datasource.getConnection();
                var ask = connection.prepareStatement("select id from customer order by id");
                var row = ask.executeQuery()) {
            var ids = new java.util.ArrayList<UUID>();
            while (row.next()) {
                ids.add(row.getObject(1, UUID.class));
            }
            return ids;
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    private static long sum(List<JournalEntry> entries, String role) {
        return entries.stream()
                .flatMap(entry -> entry.postings().stream())
                .filter(one -> one.role().startsWith(role))
                .mapToLong(one -> one.amount().minor())
                .sum();
    }
}
