package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.customers.ShutTimes;
import changeover.scheduling.visits.StandingVisit.StandingTask;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A year laid again from the day on which a task was really done. */
class YearRecountedTest {

    /** The year laid again: the visit moves with its work, the one that has its day stays, and a second time says the same. */
    @Test
    void theYearIsLaidAgainAndASecondTimeChangesNothing() {
        List<StandingVisit> standing =
                List.of(RecountTest.visit(0, "2026-06-01..2026-08-01"), RecountTest.visit(1, "2026-09-01..2026-11-01"));
        Recount recount = RecountTest.recount(
                RecountTest.EACH_QUARTER, RecountTest.CALENDAR_YEAR, "2026-03-10", standing, "2026-03-10");
        YearAgain again = YearAgain.of(
                RecountTest.CALENDAR_YEAR, 2, recount, SeasonRules.USUAL, LongestVisit.ANY, LocalDate.of(2026, 3, 10));
        List<StandingVisit> now = new ArrayList<>();
        for (YearAgain.Kept kept : again.visits()) {
            StandingVisit stood = Objects.requireNonNull(kept.stood());
            now.add(new StandingVisit(
                    stood.id(),
                    kept.visit().window(),
                    null,
                    false,
                    kept.visit().tasks().stream()
                            .map(task -> new StandingTask(UUID.randomUUID(), task, false))
                            .toList()));
        }
        assertEquals(
                List.of("2026-05-10..2026-07-10", "2026-08-10..2026-10-10"),
                now.stream().map(visit -> RecountTest.said(visit.window())).toList());
        assertEquals(
                List.of("2026-11-10..2027-01-10"),
                again.unkept().stream()
                        .map(one -> RecountTest.said(one.promise().window()))
                        .toList());
        Recount second = Recount.of(
                RecountTest.CALENDAR_YEAR,
                now,
                Map.of(ABelt.last(RecountTest.EACH_QUARTER, "2026-03-10"), Recount.Why.DONE),
                Map.of(
                        new YearToPlan.UnitTask(RecountTest.MACHINE, RecountTest.TASK),
                        List.of(again.unkept().getFirst().promise().window())),
                ShutTimes.NEVER,
                SeasonRules.USUAL,
                LocalDate.of(2026, 4, 1));
        assertTrue(second.changesNothing());
    }
}
