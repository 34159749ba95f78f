package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.customers.EquipmentRead;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.dayplan.Appointments;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MachinesTakenInTest extends MachinesTold {

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
                                first(told.home()),
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
                        told -> assertFalse(homes.equipmentRead(told.home(), LocalDate.of(2026, 4, 21))),
                        told -> assertFalse(machines.takeIn(
                                told.home(),
                                equipment.ofHome(told.home()).getFirst().id(),
                                LocalDate.of(2026, 4, 21)))),
                "2026-04-20 .. 2026-06-15: test-cool",
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
    void nothing_is_read_where_no_machine_stands() {
        UUID tenant = shop.open("CA-ON");
        shop.in(tenant, () -> {
            UUID home = shop.unread("ON");
            Refused refused = Assertions.assertThrows(Refused.class, () -> homes.equipmentRead(home, APRIL));
            return refused.refusals().getFirst().code();
        });
    }
}
