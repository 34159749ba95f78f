package changeover.scheduling.dayplan.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SeasonRunsTest extends ASpring {

    /** Two days of two technicians hold eight visits of three hours with the half hours between; of one, four. */
    @Test
    void with_one_technician_less_it_names_what_cannot_be_kept_and_the_days_that_would() {
        waiting(8, Window.ofDays(MONDAY, MONDAY.plusDays(1)), 180);
        UUID whole = planned(question(Set.of()));
        assertEquals(0, run(whole).without());
        UUID less = planned(question(Set.of(SECOND)));
        assertEquals(SeasonRun.State.DONE, run(less).state());
        assertEquals(4, run(less).without());
        List<SeasonRunReading.Row> unkept = shop.in(tenant, () -> reading.unkept(less, 10));
        assertEquals(
                Set.of("no_hours"),
                Set.copyOf(unkept.stream().map(SeasonRunReading.Row::why).toList()));
        List<SeasonRunReading.More> more = shop.in(tenant, () -> reading.more(less));
        assertEquals(
                2, more.stream().mapToInt(SeasonRunReading.More::technicians).sum());
        assertEquals(MONDAY.plusDays(1), more.getFirst().day());
        assertEquals(0, given(), "asking gives nothing");
    }

    @Test
    void what_was_cut_off_goes_on_from_what_was_written_and_nothing_is_given_twice() {
        List<UUID> waiting = waiting(6, Window.ofDays(MONDAY, MONDAY.plusDays(1)), 60);
        UUID run = shop.in(tenant, () -> runs.start(question(Set.of())));
        assertTrue(work.turn(tenant));
        work.forget();
        while (work.turn(tenant)) {
            work.forget();
        }
        assertEquals(SeasonRun.State.DONE, run(run).state());
        assertEquals(6, shop.in(tenant, () -> reading.kept(run, spring)).size());
        assertEquals(
                2,
                shop.in(tenant, () -> acceptance.accept(run, Set.copyOf(waiting.subList(0, 2))))
                        .given());
        assertEquals(4, shop.in(tenant, () -> acceptance.accept(run, null)).given());
        assertEquals(6, given());
        Refused again = assertThrows(Refused.class, () -> shop.in(tenant, () -> acceptance.accept(run, null)));
        assertEquals("season-run.nothing-to-give", again.first().code());
        assertEquals(6, run(run).accepted());
    }

    @Test
    void one_is_planned_at_a_time_and_a_halted_one_keeps_what_it_found() {
        waiting(3, Window.ofDays(MONDAY, MONDAY.plusDays(1)), 60);
        UUID run = shop.in(tenant, () -> runs.start(question(Set.of())));
        Refused second = assertThrows(Refused.class, () -> shop.in(tenant, () -> runs.start(question(Set.of()))));
        assertEquals("season-run.going-on", second.first().code());
        shop.in(tenant, () -> {
            runs.halt(run);
            return run;
        });
        assertTrue(work.turn(tenant));
        assertFalse(work.turn(tenant));
        assertEquals(3, shop.in(tenant, () -> reading.kept(run, spring)).size());
        assertThrows(
                Refused.class,
                () -> shop.in(tenant, () -> {
                    runs.halt(run);
                    return run;
                }));
    }

    @Test
    void somebody_thought_of_keeps_promises_in_thought_and_is_never_given_a_day() {
        waiting(3, Window.ofDay(MONDAY), 380);
        UUID run = planned(
                new SeasonQuestion(season, spring, MONDAY, Set.of(), 1, Window.ofDay(MONDAY), Set.of(), Set.of()));
        assertEquals(0, run(run).without());
        assertEquals(2, shop.in(tenant, () -> acceptance.accept(run, null)).given());
        assertEquals(2, given());
    }
}
