package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.ShutTimes;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RestOfYearTest {

    private static final SeasonRules COLD = new SeasonRules(Climate.cold(), true);
    private static final UUID MACHINE = new UUID(0, 7);
    private static final Term TERM = Term.ofYear(LocalDate.of(2026, 3, 1));
    private static final LocalDate TAKEN_OVER = LocalDate.of(2026, 9, 20);

    private static PromisedTask task(String code, Cadence cadence) {
        return new PromisedTask(MACHINE, code, Who.TECHNICIAN, 10, cadence, false, History.NONE);
    }

    private static final List<PromisedTask> TASKS = List.of(
            task("cooling", Cadence.EachSeason.of("cooling")),
            task("heating", Cadence.EachSeason.of("heating")),
            task("yearly", new Cadence.EveryMonths(12, 9, 15)),
            task("rarely", new Cadence.EveryMonths(30, 24, 36)));

    private static RestOfYear rest(@Nullable Integer visitsDone, @Nullable LocalDate lastVisit) {
        return RestOfYear.of(
                TERM, 2, TASKS, visitsDone, lastVisit, ShutTimes.NEVER, COLD, LongestVisit.ANY, TAKEN_OVER);
    }

    private static List<String> kept(RestOfYear rest) {
        return rest.plan().visits().stream()
                .flatMap(visit -> visit.tasks().stream())
                .map(Promise::taskCode)
                .sorted()
                .toList();
    }

    @Test
    void what_the_spring_visit_did_is_not_done_again_and_the_autumn_visit_is_planned() {
        RestOfYear rest = rest(1, LocalDate.of(2026, 4, 20));
        assertEquals(
                List.of("cooling", "yearly"),
                rest.done().stream().map(PromisedTask::taskCode).toList());
        assertEquals(1, rest.plan().visits().size());
        assertTrue(kept(rest).contains("heating"));
        assertTrue(kept(rest).contains("rarely"), "of what is done less than once a year nobody knows");
        assertTrue(kept(rest).stream().noneMatch("cooling"::equals));
        assertEquals(List.of(), rest.plan().unkept());
    }

    @Test
    void nothing_is_planned_or_called_unkept_before_the_day() {
        for (RestOfYear rest : List.of(rest(null, null), rest(0, null), rest(1, LocalDate.of(2026, 4, 20)))) {
            rest.plan()
                    .visits()
                    .forEach(visit -> assertTrue(!visit.window().from().isBefore(TAKEN_OVER), visit.toString()));
            rest.plan()
                    .unkept()
                    .forEach(one -> assertTrue(!one.promise().window().from().isBefore(TAKEN_OVER), one.toString()));
        }
    }

    @Test
    void no_more_visits_than_are_left_and_as_few_as_are_needed_where_nobody_counted() {
        assertEquals(0, rest(2, LocalDate.of(2026, 9, 10)).plan().visits().size());
        assertEquals(2, rest(0, null).plan().visits().size());
        assertEquals(1, rest(null, LocalDate.of(2026, 4, 20)).plan().visits().size());
    }

    @Test
    void a_home_whose_machines_are_to_be_read_gets_its_share_of_the_visits() {
        RestOfYear rest =
                RestOfYear.of(TERM, 2, List.of(), null, null, ShutTimes.NEVER, COLD, LongestVisit.ANY, TAKEN_OVER);
        assertEquals(1, rest.plan().visits().size());
    }
}
