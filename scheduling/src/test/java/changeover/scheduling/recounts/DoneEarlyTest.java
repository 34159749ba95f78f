package changeover.scheduling.recounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.scheduling.Shop;
import changeover.scheduling.closeout.Outcome;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.YearOfHome;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** A belt every three months and a changeover each season: what closing a visit early or late does to the rest of the year. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DoneEarlyTest extends SoldBelts {

    @Test
    void as_it_is_sold_the_belt_is_due_four_times_and_the_changeover_once() {
        assertEquals(
                List.of(
                        "2026-01-05..2026-04-04 belt",
                        "2026-04-05..2026-05-05 belt",
                        "2026-06-05..2026-08-05 belt",
                        "2026-09-05..2026-11-05 belt test-heat"),
                ahead(sold()));
    }

    @Test
    void done_early_at_its_visit_the_belts_after_it_come_earlier_and_the_changeover_stays() {
        At at = sold();
        close(at, year(at).visits().getFirst().visitId(), LocalDate.of(2026, 1, 20));
        assertEquals(
                List.of(
                        "2026-03-20..2026-05-20 belt",
                        "2026-06-20..2026-08-20 belt",
                        "2026-09-20..2026-11-15 test-heat belt"),
                ahead(at));
        assertTrue(
                year(at).visits().get(1).tasks().getFirst().reason().en().contains("last done 20\u00a0January 2026"));
    }

    @Test
    void done_at_a_visit_that_somebody_asked_for_it_counts_too_and_a_day_that_was_given_stays() {
        At at = sold();
        close(at, year(at).visits().getFirst().visitId(), LocalDate.of(2026, 4, 4));
        UUID summer = year(at).visits().stream()
                .filter(visit -> visit.window().contains(LocalDate.of(2026, 7, 7)))
                .findFirst()
                .orElseThrow()
                .visitId();
        shop.in(at.tenant(), () -> {
            appointments.give(
                    summer, new Appointments.Slot(Shop.TECHNICIAN, LocalDate.of(2026, 7, 7), LocalTime.of(9, 0), null));
            return 0;
        });
        UUID asked = askedFor(at, LocalDate.of(2026, 5, 4));
        close(at, asked, LocalDate.of(2026, 5, 4));
        YearOfHome year = year(at);
        assertEquals(
                LocalDate.of(2026, 7, 7),
                year.visits().stream()
                        .filter(visit -> visit.visitId().equals(summer))
                        .findFirst()
                        .orElseThrow()
                        .day());
        assertEquals(
                "belt",
                year.visits().stream()
                        .filter(visit -> visit.visitId().equals(summer))
                        .findFirst()
                        .orElseThrow()
                        .tasks()
                        .getFirst()
                        .taskCode());
        assertTrue(
                ahead(at).contains("2026-09-07..2026-11-07 test-heat belt"),
                ahead(at).toString());
        assertEquals(
                2, ahead(at).stream().filter(visit -> visit.contains("belt")).count());
    }

    @Test
    void a_visit_that_a_partner_has_keeps_its_belt_and_the_next_counts_from_the_partners_day() {
        At at = sold();
        UUID spring = year(at).visits().get(1).visitId();
        shop.in(at.tenant(), () -> licensed.give(spring, licensed.partner("Fulton Reyes"), LocalDate.of(2026, 4, 20)));
        close(at, year(at).visits().getFirst().visitId(), LocalDate.of(2026, 1, 20));
        assertEquals(
                List.of(
                        "2026-04-05..2026-05-05 belt",
                        "2026-06-20..2026-08-20 belt",
                        "2026-09-20..2026-11-15 test-heat belt"),
                ahead(at));
    }

    @Test
    void what_moved_goes_back_when_it_was_not_done_after_all_and_moves_again_when_it_was() {
        At at = sold();
        UUID first = year(at).visits().getFirst().visitId();
        close(at, first, LocalDate.of(2026, 1, 20));
        List<String> moved = ahead(at);
        amend(at, first, Outcome.NOT_APPLICABLE, "the pump has no belt");
        assertEquals(
                List.of(
                        "2026-04-05..2026-05-05 belt",
                        "2026-06-05..2026-08-05 belt",
                        "2026-09-05..2026-11-05 test-heat belt"),
                ahead(at));
        amend(at, first, Outcome.DONE, null);
        assertEquals(moved, ahead(at));
    }

    @Test
    void what_was_not_done_after_all_counts_from_the_time_before_it() {
        At at = sold();
        close(at, year(at).visits().getFirst().visitId(), LocalDate.of(2026, 1, 20));
        List<String> moved = ahead(at);
        UUID second = year(at).visits().get(1).visitId();
        close(at, second, LocalDate.of(2026, 4, 2));
        amend(at, second, Outcome.NOT_APPLICABLE, "typed at the wrong home");
        assertEquals(moved.subList(1, moved.size()), ahead(at));
    }

    @Test
    void closed_again_by_an_amendment_or_sent_twice_nothing_more_moves() {
        At at = sold();
        UUID first = year(at).visits().getFirst().visitId();
        close(at, first, LocalDate.of(2026, 1, 20));
        List<String> before = ahead(at);
        shop.in(at.tenant(), () -> {
            again.follow(first);
            return 0;
        });
        assertEquals(before, ahead(at));
    }

    /** Each moves the other's work: neither may hold a visit that the other waits for. */
    @Test
    void two_visits_of_one_year_closed_at_the_same_moment_both_close() throws Exception {
        LocalDate day = LocalDate.of(2026, 4, 10);
        for (int round = 0; round < 5; round++) {
            At at = sold();
            List<UUID> two = year(at).visits().stream()
                    .limit(2)
                    .map(YearOfHome.Going::visitId)
                    .toList();
            two.forEach(visit -> begin(at, visit, day));
            try (var threads = Executors.newFixedThreadPool(2)) {
                var closed = threads.invokeAll(two.stream()
                        .map(visit -> Executors.callable(() -> close(at, visit, day)))
                        .toList());
                for (var one : closed) {
                    one.get();
                }
            }
            assertEquals(
                    2,
                    year(at).visits().stream()
                            .filter(visit -> visit.standing() == YearOfHome.Standing.CLOSED)
                            .count());
        }
    }
}
