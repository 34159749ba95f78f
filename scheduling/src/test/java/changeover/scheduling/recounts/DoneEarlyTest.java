package changeover.scheduling.recounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.scheduling.Shop;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.YearOfHome;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
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
}
