package changeover.billing.payments;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What of a deposit is still held depends on the day that is asked. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DepositsHeldTest {

    private static final LocalDate TAKEN = LocalDate.of(2026, 4, 1);
    private static final Currency CAD = Currency.getInstance("CAD");

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Deposits deposits;

    @Inject
    DepositsHeld held;

    @Inject
    Owed owed;

    /** 300.00 taken; 100.00 and 14.98 of taxes paid from it, 185.02 left; 85.02 given back, 100.00 left. */
    @Test
    void what_is_held_is_what_was_taken_by_then_and_neither_applied_nor_given_back() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            UUID deposit = deposits.take(new NewDeposit(
                    customer, home, null, null, TAKEN, Way.CARD, Money.of("300.00", "CAD"), null, "A new boiler"));
            UUID invoice = drafts.write(List.of(SomeDrafts.plan(customer, home, "100.00")))
                    .getFirst();
            invoices.issue(invoice, TAKEN.plusMonths(1));
            deposits.apply(deposit, invoice, TAKEN.plusMonths(1).plusDays(1), null);
            deposits.giveBack(deposit, TAKEN.plusMonths(2), Way.CARD, Money.of("85.02", "CAD"), null);
            check(TAKEN.minusDays(1), "0.00");
            check(TAKEN, "300.00");
            check(TAKEN.plusMonths(1), "300.00");
            check(TAKEN.plusMonths(1).plusDays(1), "185.02");
            check(TAKEN.plusMonths(2).minusDays(1), "185.02");
            check(TAKEN.plusMonths(2), "100.00");
            assertEquals(
                    deposits.of(deposit).orElseThrow().left(),
                    held.on(TAKEN.plusMonths(2)).getFirst().left());
            assertEquals(
                    owed.all(TAKEN.plusMonths(2)).credit(),
                    held.on(TAKEN.plusMonths(2)).getFirst().left());
        });
    }

    private void check(LocalDate day, String expected) {
        assertEquals(
                expected,
                Money.sum(held.on(day).stream().map(DepositsHeld.Held::left).toList(), CAD)
                        .decimal(),
                day.toString());
    }
}
