package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.MachinesInAgreements;
import changeover.contracts.agreements.Offers;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.EquipmentRead;
import changeover.contracts.customers.Homes;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.dayplan.Appointments;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MachinesTakenInTest {

    private static final LocalDate APRIL = LocalDate.of(2026, 4, 1);

    @Inject
    Shop shop;

    @Inject
    Homes homes;

    @Inject
    AllEquipment equipment;

    @Inject
    Plans plans;

    @Inject
    Agreements agreements;

    @Inject
    Offers offers;

    @Inject
    MachinesInAgreements machines;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    YearsOfHomes years;

    @Inject
    Event<EquipmentRead> read;

    @Inject
    EntityManager rows;

    /** What the home's years say in the end: visits, then what is not kept. */
    private void check(List<Step> steps, String... expected) {
        UUID tenant = shop.open("CA-ON");
        List<String> said = shop.in(tenant, () -> {
            var told = new Told(shop.unread("ON"), shop.plan().id());
            for (Step step : steps) {
                step.tell(told);
            }
            return said(told.home);
        });
        assertEquals(List.of(expected), said);
    }

    private interface Step {
        void tell(Told told) throws Exception;
    }

    private record Told(UUID home, UUID plan) {}

    private List<String> said(UUID home) {
        YearOfHome year = years.of(home, new Window(APRIL, APRIL.plusYears(3)), APRIL);
        var said = new java.util.ArrayList<String>();
        year.visits().forEach(going -> said.add(SoldYearTest.said(going)));
        year.unkept()
                .forEach(one ->
                        said.add("not " + one.taskCode() + " by " + one.window().last()));
        return said;
    }

    private Step sold(LocalDate day) {
        return told -> shop.sell(told.home, told.plan, day);
    }

    private Step firstVisitMade(LocalDate day) {
        return told -> visits.close(first(told.home), day);
    }

    private UUID first(UUID home) {
        return years.of(home, new Window(APRIL, APRIL.plusYears(2)), APRIL)
                .visits()
                .getFirst()
                .visitId();
    }

    private Step found(String... kinds) {
        return told -> List.of(kinds).forEach(kind -> add(told.home, kind));
    }

    private UUID add(UUID home, String kind) {
        return equipment
                .addToHome(
                        home,
                        new Equipment.Facts(
                                null, kind, kind, null, null, null, null, null, null, null, null, null, Map.of(),
                                Map.of()))
                .id();
    }

    private Step read(LocalDate day) {
        return told -> homes.equipmentRead(told.home, day);
    }

    @Test
    void unread_it_is_only_looked_over() {
        check(
                List.of(sold(APRIL)),
                "2026-04-01 .. 2026-06-15: visit-look-over",
                "2026-09-01 .. 2026-11-15: visit-look-over");
    }

    @Test
    void read_at_the_first_visit_in_spring_the_season_has_no_visit_left_and_autumn_is_kept() {
        check(
                List.of(
                        sold(APRIL),
                        firstVisitMade(LocalDate.of(2026, 4, 20)),
                        found("test-pump", "test-humidifier", "test-filter"),
                        read(LocalDate.of(2026, 4, 20))),
                "2026-04-01 .. 2026-06-15: visit-look-over",
                "2026-09-01 .. 2026-11-15: test-heat test-pad",
                "not test-cool by 2026-06-15",
                "not test-off by 2026-06-15");
    }

    @Test
    void read_by_the_office_before_any_visit_both_seasons_are_kept() {
        check(
                List.of(sold(APRIL), found("test-pump", "test-humidifier"), read(LocalDate.of(2026, 4, 20))),
                "2026-05-01 .. 2026-06-15: test-cool test-off",
                "2026-09-01 .. 2026-11-15: test-heat test-pad");
    }

    @Test
    void read_late_what_is_over_is_named_and_the_visit_that_was_never_made_is_used() {
        check(
                List.of(sold(APRIL), found("test-pump", "test-humidifier"), read(LocalDate.of(2026, 9, 20))),
                "2026-09-20 .. 2026-11-15: test-heat test-pad",
                "2027-01-10 .. 2027-02-28: visit-look-over",
                "not test-cool by 2026-06-15",
                "not test-off by 2026-06-15");
    }

    @Test
    void a_visit_that_has_its_day_stays_and_takes_what_fits() {
        check(
                List.of(
                        sold(APRIL),
                        told -> appointments.give(
                                first(told.home),
                                new Appointments.Slot(
                                        Shop.TECHNICIAN, LocalDate.of(2026, 5, 12), LocalTime.of(9, 0), null)),
                        found("test-pump", "test-humidifier"),
                        read(LocalDate.of(2026, 4, 20))),
                "2026-05-01 .. 2026-06-15: test-cool test-off",
                "2026-09-01 .. 2026-11-15: test-heat test-pad");
    }

    @Test
    void read_twice_it_is_promised_once() {
        check(
                List.of(
                        sold(APRIL),
                        found("test-pump"),
                        read(LocalDate.of(2026, 4, 20)),
                        read(LocalDate.of(2026, 4, 20)),
                        told -> assertFalse(homes.equipmentRead(told.home, LocalDate.of(2026, 4, 21))),
                        told -> assertFalse(machines.takeIn(
                                told.home,
                                equipment.ofHome(told.home).getFirst().id(),
                                LocalDate.of(2026, 4, 21)))),
                "2026-04-20 .. 2026-06-15: test-cool",
                "2026-09-01 .. 2026-11-15: test-heat");
    }

    @Test
    void the_term_that_was_sold_after_it_is_completed_too() {
        check(
                List.of(
                        sold(APRIL),
                        told -> {
                            UUID old = agreements.of(told.home).getFirst().id();
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
                        told -> agreements.offer(offers.forHome(told.home, told.plan, APRIL, APRIL)),
                        found("test-pump"),
                        read(APRIL),
                        told -> agreements.accept(
                                agreements.of(told.home).getFirst().id(), Shop.yes(APRIL, SaleChannel.COUNTER))),
                "2026-04-01 .. 2026-06-15: test-cool",
                "2026-09-01 .. 2026-11-15: test-heat");
    }

    @Test
    void homes_that_are_read_together_are_each_laid_out_as_if_alone() {
        UUID tenant = shop.open("CA-ON");
        List<List<String>> said = shop.in(tenant, () -> {
            UUID one = shop.unread("ON");
            UUID other = shop.unread("ON");
            UUID plan = shop.plan().id();
            List.of(one, other).forEach(home -> shop.sell(home, plan, APRIL));
            UUID old = agreements.of(other).getFirst().id();
            var next = agreements.offer(offers.renewal(old, LocalDate.of(2027, 2, 1)));
            agreements.accept(next.id(), Shop.yes(LocalDate.of(2027, 2, 1), SaleChannel.COUNTER));
            add(one, "test-humidifier");
            add(other, "test-pump");
            read.fire(new EquipmentRead(List.of(one, other), LocalDate.of(2027, 2, 10)));
            return List.of(said(one), said(other));
        });
        assertEquals(
                List.of(
                        "2027-02-10 .. 2027-02-28: visit-look-over",
                        "2027-02-18 .. 2027-03-31: visit-look-over",
                        "not test-off by 2026-06-15",
                        "not test-pad by 2026-11-15"),
                said.get(0));
        assertEquals(
                List.of(
                        "2027-02-10 .. 2027-02-28: visit-look-over",
                        "2027-02-18 .. 2027-03-31: visit-look-over",
                        "2027-04-01 .. 2027-06-15: test-cool",
                        "2027-09-01 .. 2027-11-15: test-heat",
                        "not test-cool by 2026-06-15",
                        "not test-heat by 2026-11-15"),
                said.get(1));
    }

    @Test
    void what_was_sold_is_promised_whatever_the_plan_says_by_then() {
        check(
                List.of(
                        sold(APRIL),
                        told -> {
                            Plan plan = plans.find(told.plan).orElseThrow();
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
                                told.home, add(told.home, "test-humidifier"), LocalDate.of(2026, 8, 1)))),
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

    @Test
    void nothing_is_read_where_no_machine_stands() {
        UUID tenant = shop.open("CA-ON");
        shop.in(tenant, () -> {
            UUID home = shop.unread("ON");
            Refused refused = Assertions.assertThrows(Refused.class, () -> homes.equipmentRead(home, APRIL));
            return refused.refusals().getFirst().code();
        });
    }
}
