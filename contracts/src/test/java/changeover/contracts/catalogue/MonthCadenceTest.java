package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Cadence.CheckThenReplace;
import changeover.contracts.catalogue.Cadence.EveryMonths;
import changeover.contracts.catalogue.Cadence.OnRequest;
import changeover.contracts.catalogue.Cadence.TimesAYear;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import org.junit.jupiter.api.Test;

class MonthCadenceTest {

    private static final SeasonRules CARRIES = SeasonRules.USUAL;

    @Test
    void monthsCountFromTheLastTimeAndAreClippedToTheMonthsEnd() {
        Cadence yearly = new EveryMonths(12, 9, 15);
        known(yearly, "2026-01-01", "2025-05-10", "2026-02-10..2026-08-10");
        known(yearly, "2026-01-01", "2025-01-31", "2026-01-01..2026-04-30");
        known(yearly, "2026-01-01", "2024-09-30", "2026-01-01..2026-12-31");
        known(yearly, "2026-01-01", "2020-05-10", "2026-01-01..2026-12-31");
        check(yearly, "2026-01-01", CARRIES, "2026-01-01..2026-12-31");
        known(
                new EveryMonths(1, 1, 1),
                "2026-02-01",
                "2026-01-31",
                "2026-02-28..2026-02-28",
                "2026-03-31..2026-03-31",
                "2026-04-30..2026-04-30",
                "2026-05-31..2026-05-31",
                "2026-06-30..2026-06-30",
                "2026-07-31..2026-07-31",
                "2026-08-31..2026-08-31",
                "2026-09-30..2026-09-30",
                "2026-10-31..2026-10-31",
                "2026-11-30..2026-11-30",
                "2026-12-31..2026-12-31",
                "2027-01-31..2027-01-31");
        known(EveryMonths.exactly(12), "2028-06-01", "2028-02-29", "2029-02-28..2029-02-28");
        known(new EveryMonths(24, 18, 24), "2026-06-01", "2024-11-25", "2026-06-01..2026-11-25");
        known(new EveryMonths(24, 18, 24), "2025-06-01", "2024-11-25");
    }

    @Test
    void twoWindowsOfOneTaskNeverShareADay() {
        known(new EveryMonths(6, 4, 8), "2026-01-01", "2025-10-01", "2026-02-01..2026-06-01", "2026-08-01..2026-12-01");
        known(
                new EveryMonths(3, 1, 6),
                "2026-01-01",
                "2025-12-01",
                "2026-01-01..2026-06-01",
                "2026-06-02..2026-09-01",
                "2026-09-02..2026-12-01",
                "2026-12-02..2027-03-01");
        check(new EveryMonths(6, 4, 8), "2026-01-01", CARRIES, "2026-01-01..2026-06-30", "2026-07-01..2026-09-01");
    }

    @Test
    void timesAYearAreEqualPartsOfTheTerm() {
        check(new TimesAYear(2), "2027-01-01", CARRIES, "2027-01-01..2027-07-01", "2027-07-02..2027-12-31");
        check(new TimesAYear(1), "2028-02-29", CARRIES, "2028-02-29..2029-02-27");
        assertEquals(
                4,
                new TimesAYear(4)
                        .windowsIn(year("2026-03-15"), History.NONE, CARRIES)
                        .size());
        assertEquals(
                2,
                new TimesAYear(4)
                        .windowsIn(Term.ofMonths(day("2026-03-15"), 6), History.NONE, CARRIES)
                        .size());
    }

    @Test
    void aLookEveryMonthAndAReplacementAtTheCap() {
        List<String> said = new CheckThenReplace(1, 3)
                .duesIn(Term.ofMonths(day("2026-04-01"), 6), History.doneOn(day("2026-01-31")), CARRIES).stream()
                        .map(due -> due.on() + " " + due.act())
                        .toList();
        assertEquals(
                List.of(
                        "2026-04-30 REPLACE",
                        "2026-05-31 CHECK",
                        "2026-06-30 CHECK",
                        "2026-07-31 REPLACE",
                        "2026-08-31 CHECK",
                        "2026-09-30 CHECK"),
                said);
        List<Due> unknown = new CheckThenReplace(1, 3).duesIn(year("2026-05-31"), History.NONE, CARRIES);
        assertEquals(
                "2026-05-31 REPLACE",
                unknown.getFirst().on() + " " + unknown.getFirst().act());
        assertEquals(12, unknown.size());
    }

    /** By hand: 7 weeks after 2 February 2028 is 22 March, 8 weeks 29 March; then again from there. */
    @Test
    void aHomesOwnRhythmIsOneLookAndOneChange() {
        Cadence own = new Cadence.LookThenChange(49, 56);
        rhythm(own, "2028-01-15", "2028-02-02", 4, "03-22 CHECK", "03-29 REPLACE", "05-17 CHECK", "05-24 REPLACE");
        rhythm(own, "2028-03-25", "2028-02-02", 3, "03-29 REPLACE", "05-17 CHECK", "05-24 REPLACE");
        rhythm(own, "2028-06-01", "2028-02-02", 3, "06-01 REPLACE", "07-20 CHECK", "07-27 REPLACE");
        rhythm(new Cadence.LookThenChange(56, 56), "2028-01-01", "2027-12-31", 2, "02-25 REPLACE", "04-21 REPLACE");
    }

    @Test
    void onlyWhatCountsFromTheLastTimeMovesWithIt() {
        for (Cadence moves :
                List.of(EveryMonths.exactly(3), new CheckThenReplace(1, 3), new Cadence.LookThenChange(49, 56))) {
            assertTrue(moves.countsFromLastTime(), moves.toString());
        }
        for (Cadence stays : List.of(
                Cadence.EachSeason.of("heating"),
                new Cadence.BeforeSeason("winter", Period.ofWeeks(6)),
                new TimesAYear(2),
                new OnRequest())) {
            assertFalse(stays.countsFromLastTime(), stays.toString());
        }
    }

    private static void rhythm(Cadence own, String from, String last, int most, String... expected) {
        List<String> said = own.duesIn(year(from), History.doneOn(day(last)), CARRIES).stream()
                .limit(most)
                .map(due -> due.on().toString().substring(5) + " " + due.act())
                .toList();
        assertEquals(List.of(expected), said);
    }

    @Test
    void onRequestIsNeverDue() {
        check(new OnRequest(), "2027-01-31", CARRIES);
    }

    private static void check(Cadence cadence, String sold, SeasonRules rules, String... windows) {
        checkIn(cadence, year(sold), History.NONE, rules, windows);
    }

    private static void known(Cadence cadence, String from, String lastDone, String... windows) {
        checkIn(cadence, year(from), History.doneOn(day(lastDone)), CARRIES, windows);
    }

    private static void checkIn(Cadence cadence, Term term, History history, SeasonRules rules, String... windows) {
        assertEquals(
                List.of(windows),
                cadence.windowsIn(term, history, rules).stream()
                        .map(window -> window.from() + ".." + window.last())
                        .toList());
    }

    private static Term year(String from) {
        return Term.ofYear(day(from));
    }

    private static LocalDate day(String day) {
        return LocalDate.parse(day);
    }
}
