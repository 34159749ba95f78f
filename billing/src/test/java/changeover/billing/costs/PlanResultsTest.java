package changeover.billing.costs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.costs.PlanResults.Over;
import changeover.billing.ledger.ASoldPlan;
import changeover.billing.ledger.ASoldPlan.Sold;
import changeover.billing.pricing.Cause;
import changeover.billing.pricing.CostSpread;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.Overhead;
import changeover.billing.pricing.PlanCost;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * A plan for 249.00 with two visits of an hour and two filters: what it earned against what it cost.
 *
 * <p>An hour costs 57.00, a trip 21.00, a filter 15.75, overhead a fifth. The spring visit with its filter costs 57.00 + 21.00
 * + 15.75 = 93.75 and 18.75, so 112.50; the autumn visit and the return for it 78.00 and 15.60 each, so 93.60; together 299.70.
 * The price is split by 112.00, 112.00, 38.00, 38.00: a task 92.96, a filter 31.54.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PlanResultsTest extends PricedBooks {

    private static final Currency CAD = Currency.getInstance("CAD");
    private static final LocalDate SPRING = LocalDate.of(2026, 5, 4);
    private static final LocalDate AUTUMN = LocalDate.of(2026, 10, 12);
    private static final LocalDate AGAIN = LocalDate.of(2026, 10, 20);

    private Sold lived() {
        priced();
        Sold sold = plans.of("Ida Roe", 0, 2);
        UUID spring = plans.visit(sold, "plan", 60, null);
        UUID autumn = plans.visit(sold, "plan", 60, null);
        plans.invoiced(sold, ASoldPlan.FIRST, 1, "249.00");
        plans.closed(sold, spring, SPRING, "done");
        plans.filters(sold, spring, SPRING, 1);
        plans.closed(sold, autumn, AUTUMN, "deferred");
        UUID again = plans.visit(sold, "return", 60, autumn);
        plans.closed(sold, again, AGAIN, "done");
        return sold;
    }

    @Test
    void a_plan_loses_money_when_its_visits_cost_more_than_it_earned() {
        business.in(business.quebec(), () -> {
            Sold sold = lived();
            check(SPRING, Over.TERM, "124.50 - 112.50 = 12.00, 9.6 %, losing 0");
            check(AGAIN, Over.TERM, "217.46 - 299.70 = -82.24, -37.8 %, losing 1");
            check(AGAIN, Over.YEAR, "217.46 - 299.70 = -82.24, -37.8 %, losing 1");
            // In the new year nothing was done yet, and nothing is earned by days.
            assertEquals(
                    List.of(), results.on(LocalDate.of(2027, 2, 1), Over.YEAR).deals());
            assertEquals(
                    List.of(), results.on(LocalDate.of(2027, 4, 1), Over.TERM).deals());
            Results on = results.on(AGAIN, Over.TERM);
            assertEquals(
                    Map.of(
                            Cause.TASKS, cad("171.00"),
                            Cause.SET_UP, cad("0.00"),
                            Cause.TRAVEL, cad("63.00"),
                            Cause.PARTS, cad("15.75"),
                            Cause.READY, cad("0.00"),
                            Cause.OVERHEAD, cad("49.95")),
                    on.causes());
            assertEquals(
                    sold.id(), on.worstFirst(Optional.empty()).getFirst().deal().agreementId());
            List<VisitCost> visits = on.kept(Optional.empty(), Optional.of(sold.id()));
            assertEquals(3, visits.size());
            assertEquals(
                    on.cost(), Money.sum(visits.stream().map(VisitCost::total).toList(), CAD));
            assertEquals(List.of(), on.kept(Optional.of(UUID.randomUUID()), Optional.empty()));
            assertEquals(List.of(), on.missing());
            business.execute("insert into visit_ending (visit_id, how, day, why) values ('"
                    + plans.visit(sold, "plan", 60, null) + "', 'no_access', '2026-10-21', 'Nobody home')");
            // A trip for nothing: 21.00 and a fifth. The price is now split by three tasks: 67.69 each, a filter 22.97.
            check(LocalDate.of(2026, 10, 21), Over.TERM, "158.35 - 324.90 = -166.55, -105.2 %, losing 1");
        });
    }

    private void check(LocalDate day, Over over, String expected) {
        Results.OfPlan plan = results.on(day, over).byPlan().getFirst();
        assertEquals(
                expected,
                plan.earned().decimal() + " - " + plan.cost().decimal() + " = "
                        + plan.left().decimal() + ", " + plan.margin().orElseThrow() + " %, losing " + plan.losing());
    }

    @Test
    void a_cost_that_is_not_written_down_is_named() {
        business.in(business.quebec(), () -> {
            lived();
            prices.set(new PriceEntry(ItemKind.TRAVEL, PriceBook.VISIT, cad("45.00"), null, JANUARY));
            prices.set(new PriceEntry(ItemKind.PART, "f-16", cad("38.00"), null, JANUARY));
            assertEquals(
                    List.of(
                            new PlanCost.Missing(PlanCost.What.TRIP, ""),
                            new PlanCost.Missing(PlanCost.What.PART, "f-16")),
                    results.on(AGAIN, Over.TERM).missing());
        });
    }

    /** Planned 60 and 15 of set-up, twice; taken 60 three times. 150 minutes are 142.50, 180 are 171.00. */
    @Test
    void visits_stand_against_their_plan() {
        business.in(business.quebec(), () -> {
            Sold sold = lived();
            for (AgainstPlan.By by : AgainstPlan.By.values()) {
                List<AgainstPlan> lines = AgainstPlan.of(kept.until(AGAIN).visits(), by, books.read());
                assertEquals(180, lines.stream().mapToInt(AgainstPlan::actual).sum());
                assertEquals(150, lines.stream().mapToInt(AgainstPlan::planned).sum());
            }
            AgainstPlan line = AgainstPlan.of(kept.until(AGAIN).visits(), AgainstPlan.By.AGREEMENT, books.read())
                    .getFirst();
            assertEquals(sold.id().toString(), line.key());
            assertEquals(3, line.visits());
            assertEquals(1, line.returns());
            assertEquals(cad("142.50"), line.foreseen());
            assertEquals(cad("171.00"), line.cost());
            assertEquals(cad("31.50"), line.partsForeseen());
            assertEquals(cad("15.75"), line.parts());
            assertTrue(line.whole());
        });
    }

    @Test
    void the_past_is_what_a_spread_rests_on() {
        business.in(business.quebec(), () -> {
            lived();
            List<CostSpread.Past> past = kept.past(AGAIN, 15);
            assertEquals(2, past.size());
            assertEquals(75, past.getFirst().planned());
            assertEquals(60, past.getFirst().actual());
            assertEquals(0, past.getFirst().parts().get("filter").compareTo(BigDecimal.ONE));
            assertEquals(0, past.getLast().parts().get("filter").signum());
            assertEquals(60, past.getLast().returnMinutes());
            assertEquals(1, kept.past(SPRING, 15).size());
        });
    }

    /**
     * 5 % of 249.00 is 12.45; a term that is over is no longer concerned. 5 % of the 217.46 earned so far is 10.87, so that 71.37
     * of 228.33 would still be lost; half as much again is enough.
     */
    @Test
    void a_rise_at_renewal_concerns_what_is_in_force() {
        business.in(business.quebec(), () -> {
            lived();
            PriceRise rise = PriceRise.of(results.on(AGAIN, Over.TERM), BigDecimal.valueOf(5));
            PriceRise.OfPlan plan = rise.plans().getFirst();
            assertEquals(1, plan.agreements());
            assertEquals(cad("249.00"), rise.sum(PriceRise.OfDeal::now));
            assertEquals(cad("12.45"), rise.sum(PriceRise.OfDeal::rise));
            assertEquals(cad("-71.37"), rise.sum(PriceRise.OfDeal::leftThen));
            assertEquals(
                    "-37.8 -31.3 1 1",
                    plan.margin().orElseThrow() + " " + plan.marginThen().orElseThrow() + " " + plan.losing() + " "
                            + plan.wouldLose());
            assertEquals(
                    1, rise.listed(Optional.of(plan.planId()), true).deals().size());
            PriceRise enough = PriceRise.of(results.on(AGAIN, Over.TERM), BigDecimal.valueOf(50));
            assertEquals(0, enough.plans().getFirst().wouldLose());
            assertEquals(List.of(), enough.listed(Optional.empty(), true).deals());
            assertEquals(
                    List.of(),
                    PriceRise.of(results.on(LocalDate.of(2027, 4, 1), Over.TERM), BigDecimal.valueOf(5))
                            .plans());
        });
    }

    /** For days before the first figures the first count; the latest by then otherwise. */
    @Test
    void figures_hold_from_their_day_on() {
        business.in(business.quebec(), () -> {
            running.set(new RunningCost.Facts(SPRING, 15, new Overhead.Percent(BigDecimal.valueOf(20)), null, null));
            running.set(new RunningCost.Facts(AUTUMN, 20, new Overhead.AnHour(cad("18.00")), null, null));
            running.set(new RunningCost.Facts(AUTUMN, 25, new Overhead.AnHour(cad("18.00")), null, null));
            CostBook book = books.read();
            assertEquals(15, book.rates(JANUARY, null).setUpMinutes());
            assertEquals(15, book.rates(AUTUMN.minusDays(1), null).setUpMinutes());
            assertEquals(25, book.rates(AUTUMN, null).setUpMinutes());
            assertEquals(
                    new Overhead.AnHour(cad("18.00")), book.rates(AGAIN, null).overhead());
            assertEquals(2, running.all().size());
        });
    }
}
