package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Invoices;
import changeover.billing.ledger.ASoldPlan.Sold;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * A plan of 249.00 that ends on 15 August, 136 of 365 days after its first: done visits, credit, taxes and instalments worked
 * through by hand. By days 249 × 136 / 365 = 92.78 is kept, by work the share of each visit done, 124.50; the tax that is left is
 * the tax on what is left: 4.64 and 9.25 on 92.78, 6.23 and 12.42 on 124.50, 10.86 and 21.67 on 217.28.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SettledInstalmentsTest {

    static final LocalDate END = LocalDate.of(2026, 8, 15);

    @Inject
    ABusiness business;

    @Inject
    ASoldPlan plans;

    @Inject
    Settlements settlements;

    @Inject
    Invoices invoices;

    @Inject
    BooksHold books;

    private void check(Sold sold, String... expected) {
        assertEquals(
                List.of(expected), ASoldPlan.ways(settlements.of(sold.id(), END).orElseThrow()));
    }

    @Test
    void in_twelve_instalments_of_which_four_were_asked_for_and_none_paid() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Ida Roe", 0, 0);
            UUID spring = plans.visit(sold, "plan", 60, null);
            plans.visit(sold, "plan", 60, null);
            plans.instalments(sold);
            plans.closed(sold, spring, LocalDate.of(2026, 5, 4), "done");
            plans.ends(sold, END);
            check(
                    sold,
                    "pro-rata* keep 92.78 credit 0.00 total 0.00 back 0.00 bill 9.78",
                    "work-done keep 124.50 credit 0.00 total 0.00 back 0.00 bill 41.50",
                    "pro-rata-less-work keep 217.28 credit 0.00 total 0.00 back 0.00 bill 134.28");
            assertEquals(
                    8, settlements.of(sold.id(), END).orElseThrow().waiting().size());
            assertEquals(
                    List.of(), settlements.settle(sold.id(), RefundWay.PRO_RATA, END, "Moved away"), "no credit note");
            assertEquals(
                    "5 9.78",
                    settlements.of(sold.id(), END).orElseThrow().waiting().stream()
                            .map(one -> one.instalment() + " " + one.net().decimal())
                            .collect(Collectors.joining(", ")),
                    "one is lessened to what is kept, the others fell");
            assertEquals(
                    "settlement.nothing",
                    assertThrows(
                                    Refused.class,
                                    () -> settlements.settle(sold.id(), RefundWay.PRO_RATA, END, "Moved away"))
                            .first()
                            .code());
            invoices.issue(
                    settlements
                            .of(sold.id(), END)
                            .orElseThrow()
                            .waiting()
                            .getFirst()
                            .id(),
                    END);
            assertEquals(
                    "92.78",
                    settlements.of(sold.id(), END).orElseThrow().billed().decimal());
            books.check();
        });
    }

    /** 41.50 is two instalments of 20.75 to the cent: they stay as they are, six fall. */
    @Test
    void instalments_stay_as_far_as_more_is_kept_than_was_billed() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Ida Roe", 0, 0);
            UUID spring = plans.visit(sold, "plan", 60, null);
            plans.visit(sold, "plan", 60, null);
            plans.instalments(sold);
            plans.closed(sold, spring, LocalDate.of(2026, 5, 4), "done");
            plans.ends(sold, END);
            settlements.settle(sold.id(), RefundWay.WORK_DONE, END, "Moved away");
            assertEquals(
                    "5 20.75, 6 20.75",
                    settlements.of(sold.id(), END).orElseThrow().waiting().stream()
                            .map(one -> one.instalment() + " " + one.net().decimal())
                            .collect(Collectors.joining(", ")));
        });
    }
}
