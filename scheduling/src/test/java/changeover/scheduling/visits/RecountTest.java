package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.ShutTimes;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.StandingVisit.StandingTask;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is left of a year once a task was done early or late; every answer counted by hand on a calendar. */
class RecountTest {

    static final UUID MACHINE = new UUID(1, 1);
    static final String TASK = "belt";

    static final Cadence EACH_QUARTER = new Cadence.EveryMonths(3, 2, 4);
    private static final Cadence EACH_HALF = new Cadence.EveryMonths(6, 5, 7);
    private static final Cadence EACH_YEAR = new Cadence.EveryMonths(12, 9, 15);

    /** 2026 from its first day to its last. */
    static final Term CALENDAR_YEAR = Term.ofYear(LocalDate.of(2026, 1, 1));

    private static final Window SUMMER = Window.ofDays(LocalDate.of(2026, 6, 1), LocalDate.of(2026, 8, 1));

    /** A visit with one line, by its first and last day; a day alone is the day it has. */
    static StandingVisit visit(int number, String days) {
        String[] ends = days.split("\\.\\.");
        LocalDate from = LocalDate.parse(ends[0]);
        Window window = ends.length == 1 ? Window.ofDay(from) : Window.ofDays(from, LocalDate.parse(ends[1]));
        return visit(number, window, ends.length == 1 ? from : null, false, false);
    }

    private static StandingVisit visit(int number, Window days, @Nullable LocalDate day, boolean begun, boolean off) {
        List<StandingTask> line = List.of(new StandingTask(new UUID(8, number), promise(days), off));
        return new StandingVisit(new UUID(9, number), days, day, begun, line);
    }

    private static Promise promise(Window window) {
        return new Promise(
                MACHINE,
                TASK,
                Who.TECHNICIAN,
                30,
                new Due(window, window.from(), Due.Act.DO),
                new Wording("because", "parce que"));
    }

    static Recount recount(
            Cadence cadence, Term term, @Nullable String done, List<StandingVisit> standing, String today) {
        return Recount.of(
                term,
                standing,
                Map.of(ABelt.last(cadence, done), Recount.Why.DONE),
                Map.of(),
                ShutTimes.NEVER,
                SeasonRules.USUAL,
                LocalDate.parse(today));
    }

    /** @param standing the visits with the task that are still to come */
    private static void check(Cadence cadence, Term term, String done, List<String> standing, String... expected) {
        List<StandingVisit> visits = new ArrayList<>();
        standing.forEach(days -> visits.add(visit(visits.size(), days)));
        Recount recount = recount(cadence, term, done, visits, done);
        List<String> said = new ArrayList<>();
        visits.stream()
                .filter(visit -> visit.day() != null || recount.changesNothing())
                .forEach(visit -> said.add(said(visit.window())));
        recount.owed().forEach(promise -> said.add(said(promise.window())));
        assertEquals(List.of(expected), said);
    }

    static String said(Window window) {
        return window.days() == 1 ? window.from().toString() : window.from() + ".." + window.last();
    }

    @Test
    void doneOnItsDayNothingMoves() {
        check(
                EACH_QUARTER,
                CALENDAR_YEAR,
                "2026-04-01",
                List.of("2026-06-01..2026-08-01", "2026-09-01..2026-11-01"),
                "2026-06-01..2026-08-01",
                "2026-09-01..2026-11-01");
    }

    @Test
    void doneEarlyTheRestComesEarlier() {
        check(
                EACH_QUARTER,
                CALENDAR_YEAR,
                "2026-03-10",
                List.of("2026-06-01..2026-08-01", "2026-09-01..2026-11-01"),
                "2026-05-10..2026-07-10",
                "2026-08-10..2026-10-10",
                "2026-11-10..2027-01-10");
    }

    @Test
    void doneLateTheRestComesLaterAndWhatFallsAfterTheTermIsNotOwed() {
        check(EACH_HALF, CALENDAR_YEAR, "2026-07-05", List.of("2026-11-01..2027-01-01"));
        check(
                EACH_QUARTER,
                CALENDAR_YEAR,
                "2026-05-01",
                List.of("2026-06-01..2026-08-01", "2026-09-01..2026-11-01"),
                "2026-07-01..2026-09-01",
                "2026-10-01..2026-12-01");
    }

    @Test
    void onceAYearDoneEarlyIsNotOwedAgainInTheTerm() {
        check(EACH_YEAR, CALENDAR_YEAR, "2026-02-03", List.of("2026-03-15..2026-09-15"));
    }

    @Test
    void onceAYearDoneAtTheEndOfTheYearBeforeIsOwedLaterInThisOne() {
        check(EACH_YEAR, CALENDAR_YEAR, "2025-12-28", List.of("2026-01-01..2026-06-30"), "2026-09-28..2027-03-28");
    }

    @Test
    void monthEndsAndTheLeapDayAreClippedAndCountedFromTheDayItself() {
        check(
                Cadence.EveryMonths.exactly(6),
                Term.ofYear(LocalDate.of(2027, 7, 1)),
                "2027-08-31",
                List.of("2028-02-10..2028-02-11"),
                "2028-02-29");
        check(
                Cadence.EveryMonths.exactly(1),
                new Term(LocalDate.of(2028, 1, 15), LocalDate.of(2028, 5, 15)),
                "2028-01-31",
                List.of("2028-02-01..2028-02-02"),
                "2028-02-29",
                "2028-03-31",
                "2028-04-30");
        check(
                Cadence.EveryMonths.exactly(12),
                Term.ofYear(LocalDate.of(2028, 3, 1)),
                "2028-02-29",
                List.of("2028-06-01..2028-07-01"),
                "2029-02-28");
    }

    @Test
    void aTermOverTheTurnOfTheYearIsCountedThrough() {
        check(
                EACH_QUARTER,
                new Term(LocalDate.of(2026, 10, 1), LocalDate.of(2027, 10, 1)),
                "2026-11-20",
                List.of("2027-02-01..2027-03-31", "2027-05-01..2027-06-30", "2027-08-01..2027-09-30"),
                "2027-01-20..2027-03-20",
                "2027-04-20..2027-06-20",
                "2027-07-20..2027-09-20");
    }

    @Test
    void aVisitThatHasItsDayKeepsTheTaskAndTheNextCountsFromIt() {
        check(
                EACH_QUARTER,
                CALENDAR_YEAR,
                "2026-03-10",
                List.of("2026-06-20", "2026-09-01..2026-11-01"),
                "2026-06-20",
                "2026-08-20..2026-10-20",
                "2026-11-20..2027-01-20");
    }

    @Test
    void aVisitThatAPartnerHasCountsFromThePartnersDayWhileItIsToCome() {
        StandingVisit given = visit(0, SUMMER, LocalDate.of(2026, 6, 20), true, false);
        Recount before = recount(EACH_QUARTER, CALENDAR_YEAR, "2026-03-10", List.of(given), "2026-03-10");
        assertEquals(List.of(given), before.standing());
        assertEquals("2026-08-20..2026-10-20", said(before.owed().getFirst().window()));
        Recount after = recount(EACH_QUARTER, CALENDAR_YEAR, "2026-06-02", List.of(given), "2026-06-20");
        assertEquals("2026-08-02..2026-10-02", said(after.owed().getFirst().window()));
    }

    @Test
    void whatIsCountedNewKeepsItsRowsInTheirOrder() {
        List<StandingVisit> standing = List.of(visit(0, "2026-09-01..2026-11-01"), visit(1, "2026-06-01..2026-08-01"));
        Recount earlier = recount(EACH_QUARTER, CALENDAR_YEAR, "2026-03-10", standing, "2026-03-10");
        assertEquals(
                List.of(new UUID(8, 1), new UUID(8, 0)),
                earlier.owed().stream()
                        .limit(2)
                        .map(promise -> earlier.rows().get(promise))
                        .toList());
        assertEquals(2, earlier.rows().size());
        assertEquals(List.of(), earlier.gone());
        Recount once = recount(EACH_YEAR, CALENDAR_YEAR, "2026-02-03", standing, "2026-02-03");
        assertEquals(List.of(new UUID(8, 1), new UUID(8, 0)), once.gone());
        assertTrue(once.standing().stream().allMatch(visit -> visit.tasks().isEmpty()));
    }

    @Test
    void seasonsAndPartsOfTheYearStayWhereTheyAre() {
        List<StandingVisit> autumn = List.of(visit(0, "2026-09-01..2026-11-15"));
        for (Cadence cadence : List.of(
                Cadence.EachSeason.of("heating"),
                new Cadence.BeforeSeason("heating", java.time.Period.ofMonths(1)),
                new Cadence.TimesAYear(2),
                new Cadence.OnRequest())) {
            assertTrue(recount(cadence, CALENDAR_YEAR, "2026-08-20", autumn, "2026-08-20")
                    .changesNothing());
        }
    }

    @Test
    void whatNobodyDidIsNotCounted() {
        assertTrue(recount(EACH_QUARTER, CALENDAR_YEAR, null, List.of(visit(0, "2026-06-01..2026-08-01")), "2026-03-10")
                .changesNothing());
    }

    /** What was told so late that the next time is over by now stays as it was laid. */
    @Test
    void whatIsToldTooLateMovesNothing() {
        List<StandingVisit> laid = List.of(visit(0, "2026-06-01..2026-08-01"));
        assertTrue(recount(EACH_QUARTER, CALENDAR_YEAR, "2026-03-10", laid, "2026-07-11")
                .changesNothing());
    }

    @Test
    void aReadingThatWasPutOffStaysWithTheVisitItJoined() {
        StandingVisit joined = visit(0, SUMMER, null, false, true);
        Recount recount = recount(EACH_HALF, CALENDAR_YEAR, "2026-03-10", List.of(joined), "2026-03-10");
        assertEquals(List.of(joined), recount.standing());
        assertEquals(List.of(), recount.gone());
        assertEquals(Map.of(), recount.rows());
        assertEquals("2026-08-10..2026-10-10", said(recount.owed().getFirst().window()));
    }
}
