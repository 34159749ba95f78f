package changeover.scheduling.dayplan.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.HomesShut;
import changeover.contracts.tenants.SettableClock;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.Rosters;
import changeover.scheduling.dayplan.SeasonVisits;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Which visits a season plans, and which of its days can still be given when the yes comes late. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SeasonsOpenVisitsTest extends ASpring {

    @Inject
    Rosters rosters;

    @Inject
    HomesShut shut;

    @Inject
    SeasonVisits counted;

    @Inject
    SettableClock clock;

    @Inject
    EntityManager rows;

    @AfterEach
    void realTime() {
        clock.reset();
    }

    private List<LeftOut.Why> leftOut(UUID run) {
        return shop.in(tenant, () -> acceptance.leftOut(run)).stream()
                .map(LeftOut::why)
                .toList();
    }

    @Test
    void a_season_moved_into_the_windows_of_its_visits_still_plans_them_all_on_its_own_days() {
        waiting(5, Window.ofDays(LocalDate.of(2027, 4, 1), LocalDate.of(2027, 6, 15)), 60);
        Window later = Window.ofDays(LocalDate.of(2027, 4, 15), LocalDate.of(2027, 6, 15));
        UUID run = planned(
                new SeasonQuestion(season, later, LocalDate.of(2027, 4, 2), Set.of(), 0, null, Set.of(), Set.of()));
        assertEquals(5, run(run).visits());
        List<SeasonRunReading.Row> kept = shop.in(tenant, () -> reading.kept(run, later));
        assertEquals(5, kept.size());
        assertEquals(5, shop.in(tenant, () -> counted.counts(later)).get("unplaced"));
    }

    @Test
    void what_is_late_is_planned_first_with_the_season_under_way() {
        clock.setDay(MONDAY.minusDays(3));
        waiting(2, Window.ofDays(LocalDate.of(2027, 1, 10), LocalDate.of(2027, 2, 28)), 60);
        waiting(1, spring, 60);
        UUID run = planned(question(Set.of()));
        List<SeasonRunReading.Row> kept = shop.in(tenant, () -> reading.kept(run, spring));
        assertEquals(3, kept.size());
        assertTrue(kept.stream()
                .filter(row -> row.last().isBefore(MONDAY))
                .allMatch(row -> row.day() != null && row.day().isBefore(MONDAY.plusDays(14))));
        assertEquals(2, shop.in(tenant, () -> reading.late(run)));
        assertEquals(3, shop.in(tenant, () -> acceptance.accept(run, null)).given(), "late stays late, and is given");
    }

    @Test
    void an_hour_given_away_meanwhile_is_named_and_the_others_are_given() {
        waiting(6, Window.ofDays(MONDAY, MONDAY.plusDays(1)), 60);
        UUID run = planned(question(Set.of()));
        SeasonRunReading.Row first =
                shop.in(tenant, () -> reading.kept(run, spring)).getFirst();
        UUID urgent = waiting(1, Window.ofDay(MONDAY), 60).getFirst();
        shop.in(
                tenant,
                () -> appointments.give(
                        urgent,
                        new Appointments.Slot(
                                first.technicianId(),
                                first.day(),
                                first.starts().plusMinutes(5),
                                null)));
        SeasonAcceptance.Accepted accepted = shop.in(tenant, () -> acceptance.accept(run, null));
        assertEquals(5, accepted.given());
        assertEquals(LeftOut.Why.HOUR_TAKEN, accepted.leftOut().getFirst().why());
        assertEquals(first.visit(), accepted.leftOut().getFirst().visit());
        assertEquals(List.of(LeftOut.Why.HOUR_TAKEN), leftOut(run));
        assertEquals(0, shop.in(tenant, () -> acceptance.accept(run, null)).given());
        assertEquals(5, run(run).accepted());
    }

    @Test
    void a_day_off_and_a_last_day_since_the_run_leave_those_out_alone() {
        waiting(8, Window.ofDays(MONDAY, MONDAY.plusDays(1)), 170);
        UUID run = planned(question(Set.of()));
        List<SeasonRunReading.Row> kept = shop.in(tenant, () -> reading.kept(run, spring));
        assertEquals(8, kept.size());
        shop.in(tenant, () -> rosters.takeOff(SECOND, MONDAY, "a course"));
        assertEquals(List.of(LeftOut.Why.DAY_OFF, LeftOut.Why.DAY_OFF), leftOut(run));
        shop.in(tenant, () -> {
            people.of(SECOND).orElseThrow().end(MONDAY);
            people.keep();
            return 0;
        });
        assertEquals(
                List.of(LeftOut.Why.DAY_OFF, LeftOut.Why.DAY_OFF, LeftOut.Why.LEFT, LeftOut.Why.LEFT), leftOut(run));
        assertEquals(4, shop.in(tenant, () -> acceptance.accept(run, null)).given());
    }

    @Test
    void a_shut_home_a_moved_window_and_a_day_that_is_over_are_left_out() {
        clock.setDay(MONDAY.minusDays(3));
        List<UUID> waiting = new ArrayList<>(waiting(4, Window.ofDays(MONDAY, MONDAY.plusDays(1)), 170));
        UUID run = planned(question(Set.of()));
        assertEquals(List.of(), leftOut(run));
        shop.in(
                tenant,
                () -> rows.createNativeQuery(
                                "update visit set window_from = :from, window_until = :until where id = :id")
                        .setParameter("from", MONDAY.plusDays(20))
                        .setParameter("until", MONDAY.plusDays(30))
                        .setParameter("id", waiting.getFirst())
                        .executeUpdate());
        assertEquals(List.of(LeftOut.Why.WINDOW_MOVED), leftOut(run));
        shop.in(tenant, () -> shut.shut(home, new HomesShut.Facts(MONDAY, MONDAY.plusDays(2), false, false, "away")));
        assertEquals(
                3, leftOut(run).stream().filter(LeftOut.Why.HOME_SHUT::equals).count());
        clock.setDay(MONDAY.plusDays(2));
        assertEquals(List.of(LeftOut.Why.PAST, LeftOut.Why.PAST, LeftOut.Why.PAST, LeftOut.Why.PAST), leftOut(run));
        SeasonAcceptance.Accepted accepted = shop.in(tenant, () -> acceptance.accept(run, Set.copyOf(waiting)));
        assertEquals(0, accepted.given());
        assertEquals(4, accepted.leftOut().size());
        assertTrue(accepted.leftOut().stream().allMatch(one -> one.starts().isAfter(LocalTime.of(7, 0))));
    }
}
