package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.ledger.ASoldPlan.Sold;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.NewRefund;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Refunds;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
import changeover.billing.periods.Periods;
import changeover.billing.pricesfile.PricesFile;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.MarkUp;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.PriceRow;
import changeover.billing.pricing.Prices;
import changeover.billing.pricing.PricingRules;
import changeover.billing.runs.BillingRuns;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** A closed day takes nothing more; what is amended afterwards goes into the next period. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ClosedPeriodsTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 10);
    static final LocalDate CLOSED = LocalDate.of(2026, 4, 30);

    @Inject
    ABusiness business;

    @Inject
    ASoldPlan plans;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    Refunds refunds;

    @Inject
    BillingRuns runs;

    @Inject
    Periods periods;

    @Inject
    PeriodEnd ends;

    @Inject
    Journal journal;

    @Inject
    Prices prices;

    @Inject
    PricingRules rules;

    @Inject
    PricesFile file;

    private static void refused(String code, Executable deed) {
        assertEquals(
                code, assertThrows(Refused.class, deed).refusals().getFirst().code());
    }

    private UUID pay(UUID customer, LocalDate day) {
        return payments.take(new NewPayment(customer, day, Way.CARD, Money.of("5.00", "CAD"), null, null, List.of()));
    }

    @Test
    void nothing_bears_a_closed_day_until_the_owner_opens_it_again() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            UUID before = pay(customer, DAY);
            UUID close = ends.close(CLOSED);
            UUID draft = drafts.write(List.of(SomeDrafts.on(DAY, customer, home, "100.00")))
                    .getFirst();
            refused("period.closed", () -> invoices.issue(draft, DAY));
            assertEquals(
                    "period.closed",
                    invoices.issue(List.of(draft), CLOSED).refused().get(draft).code());
            refused("period.closed", () -> runs.start(DAY));
            refused("period.closed", () -> pay(customer, CLOSED));
            refused("period.closed", () -> payments.undo(before, Undoing.How.MISTAKE, CLOSED, "Twice"));
            refused("period.closed", () -> payments.settle(customer, DAY));
            refused(
                    "period.closed",
                    () -> refunds.give(new NewRefund(customer, DAY, Way.CARD, Money.of("1.00", "CAD"), null, null)));
            refused("period.closed-already", () -> ends.close(DAY));
            refused("period.to-come", () -> ends.close(LocalDate.of(9000, 1, 1)));
            refused("period.why", () -> periods.reopen(close, " x "));
            pay(customer, CLOSED.plusDays(1));
            periods.reopen(close, "A late letter of the bank");
            refused("period.open-already", () -> periods.reopen(close, "Once more"));
            invoices.issue(draft, DAY);
            pay(customer, DAY);
            assertTrue(periods.closedUntil().isEmpty());
        });
        business.in(tenant, () -> {
            ends.close(CLOSED);
        });
        assertTrue(assertThrows(
                        RuntimeException.class,
                        () -> business.in(
                                tenant,
                                () -> business.execute(
                                        "insert into payment (kind, customer_id, day, way, amount_minor,"
                                                + " currency) select 'payment', id, '2026-04-30', 'card', 1, 'CAD' from customer")))
                .getCause()
                .getMessage()
                .contains("the period is closed"));
    }

    /** What was earned in closed days was split by their prices. */
    @Test
    void no_price_and_no_mark_up_begins_in_closed_days() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            prices.set(hour("90.00", DAY));
            ends.close(CLOSED);
            refused("period.closed", () -> prices.set(hour("190.00", DAY)));
            refused("period.closed", () -> prices.set(hour("190.00", CLOSED)));
            refused(
                    "period.closed",
                    () -> prices.writeAll(List.of(new PriceRow(
                            ItemKind.LABOUR, PriceBook.HOUR, null, Money.of("190.00", "CAD"), null, CLOSED))));
            refused(
                    "period.closed",
                    () -> rules.setByCost(List.of(new MarkUp(
                            MarkUp.Scope.COST,
                            "",
                            Money.zero(Currency.getInstance("CAD")),
                            new BigDecimal("50"),
                            Money.of("0.05", "CAD"),
                            CLOSED))));
            prices.set(hour("190.00", CLOSED.plusDays(1)));
            String rows = "kind,item,from,price\nlabour,hour," + DAY + ",95.00\nlabour,hour," + CLOSED.plusDays(2)
                    + ",99.00\n";
            PricesFile.Outcome brought =
                    file.bring(rows.getBytes(StandardCharsets.UTF_8), CLOSED.plusDays(1), false, false);
            assertEquals(1, brought.written());
            assertEquals(
                    "2 from period.closed",
                    brought.faults().stream()
                            .map(fault -> fault.row() + " " + fault.column() + " "
                                    + fault.why().code())
                            .findFirst()
                            .orElseThrow());
        });
        assertTrue(assertThrows(
                        RuntimeException.class,
                        () -> business.in(
                                tenant,
                                () -> business.execute(
                                        "update price set price_minor = 1 where valid_from <= '2026-04-30'")))
                .getCause()
                .getMessage()
                .contains("the period is closed"));
    }

    private static PriceEntry hour(String price, LocalDate from) {
        return new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, Money.of(price, "CAD"), null, from);
    }

    @Test
    void the_last_closing_is_opened_before_an_earlier_one() {
        business.in(business.quebec(), () -> {
            UUID april = ends.close(CLOSED);
            UUID may = ends.close(CLOSED.plusMonths(1));
            refused("period.later-first", () -> periods.reopen(april, "A late letter of the bank"));
            assertEquals(CLOSED.plusMonths(1), periods.closedUntil().orElseThrow());
            periods.reopen(may, "A late letter of the bank");
            periods.reopen(april, "A late letter of the bank");
            assertTrue(periods.closedUntil().isEmpty());
        });
    }

    @Test
    void a_visit_amended_into_a_closed_month_is_earned_in_the_next() {
        business.in(business.quebec(), () -> {
            Sold sold = plans.of("Jo Poe", 0, 0);
            UUID visit = plans.visit(sold, "plan", 60, null);
            plans.visit(sold, "plan", 60, null);
            plans.invoiced(sold, ASoldPlan.FIRST, 1, "249.00");
            Period april = new Period(ASoldPlan.FIRST, CLOSED);
            ends.close(CLOSED);
            List<JournalEntry> said = journal.of(april);
            plans.closed(sold, visit, DAY, "done");
            assertEquals(said, journal.of(april));
            Period may = new Period(CLOSED.plusDays(1), CLOSED.plusMonths(1));
            assertEquals(
                    "124.50",
                    Journal.moved(journal.of(may)).stream()
                            .filter(one -> one.role().equals("revenue-plan"))
                            .findFirst()
                            .orElseThrow()
                            .credit()
                            .decimal());
        });
    }
}
