package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.calendar.Window;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.scheduling.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Machines read once another term or offer stands, or in the middle of a term. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MachinesOfOtherTermsTest extends MachinesTold {

    @Test
    void the_term_that_was_sold_after_it_is_completed_too() {
        check(
                List.of(
                        sold(APRIL),
                        told -> {
                            UUID old = agreements.of(told.home()).getFirst().id();
                            var next = agreements.offer(offers.renewal(old, LocalDate.of(2027, 2, 1)));
                            agreements.accept(next.id(), Shop.yes(LocalDate.of(2027, 2, 1), SaleChannel.COUNTER));
                        },
                        found("test-pump"),
                        read(LocalDate.of(2027, 2, 10))),
                "2027-02-10 .. 2027-02-28: visit-look-over",
                "2027-02-18 .. 2027-03-31: visit-look-over",
                "2027-04-01 .. 2027-06-15: test-cool",
                "2027-09-01 .. 2027-11-15: test-heat",
                "not test-cool by 2026-06-15",
                "not test-heat by 2026-11-15");
    }

    @Test
    void an_offer_that_still_stands_is_kept_whole_by_a_later_yes() {
        check(
                List.of(
                        told -> agreements.offer(offers.forHome(told.home(), told.plan(), APRIL, APRIL)),
                        found("test-pump"),
                        read(APRIL),
                        told -> agreements.accept(
                                agreements.of(told.home()).getFirst().id(), Shop.yes(APRIL, SaleChannel.COUNTER))),
                "2026-04-01 .. 2026-06-15: test-cool",
                "2026-09-01 .. 2026-11-15: test-heat");
    }

    @Test
    void what_was_sold_is_promised_whatever_the_plan_says_by_then() {
        check(
                List.of(
                        sold(APRIL),
                        told -> {
                            Plan plan = plans.find(told.plan()).orElseThrow();
                            PlanFacts was = plan.facts();
                            plan.change(new PlanFacts(
                                    was.code(),
                                    was.name(),
                                    was.visits(),
                                    was.price(),
                                    was.discountPercent(),
                                    was.instalments(),
                                    was.includedMinutes(),
                                    was.coversRepairs(),
                                    was.tasks().subList(1, 2),
                                    was.parts(),
                                    was.extras()));
                            plans.keep();
                        },
                        found("test-pump"),
                        read(APRIL)),
                "2026-04-01 .. 2026-06-15: test-cool",
                "2026-09-01 .. 2026-11-15: test-heat");
    }

    @Test
    void a_machine_that_comes_in_mid_term_pushes_nothing_out() {
        check(
                List.of(
                        sold(APRIL),
                        found("test-pump"),
                        read(LocalDate.of(2026, 4, 2)),
                        told -> assertTrue(machines.takeIn(
                                told.home(), add(told.home(), "test-humidifier"), LocalDate.of(2026, 8, 1)))),
                "2026-04-02 .. 2026-06-15: test-cool",
                "2026-09-01 .. 2026-11-15: test-heat test-pad",
                "not test-off by 2026-06-15");
    }

    @Test
    void the_households_list_begins_with_the_reading() {
        UUID tenant = shop.open("CA-ON");
        LocalDate day = LocalDate.of(2026, 7, 10);
        List<YearOfHome.OwnTask> own = shop.in(tenant, () -> {
            UUID home = shop.unread("ON");
            shop.sell(home, shop.plan().id(), APRIL);
            add(home, "test-filter");
            homes.equipmentRead(home, day);
            return years.of(home, new Window(APRIL, APRIL.plusYears(1)), day).household();
        });
        assertEquals(day, own.getFirst().dueOn());
        assertEquals("replace", own.getFirst().act());
        assertEquals(9, own.size());
    }
}
