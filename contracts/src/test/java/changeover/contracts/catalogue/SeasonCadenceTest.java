package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Cadence.BeforeSeason;
import changeover.contracts.catalogue.Cadence.EachSeason;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SeasonCadenceTest {

    /** Cooling 1 April to 15 June, heating 1 September to 15 November. */
    private static final Cadence TWO_VISITS = EachSeason.of("cooling", "heating");

    private static final SeasonRules CARRIES = SeasonRules.USUAL;
    private static final SeasonRules LEAVES = new SeasonRules(Climate.cold(), false);

    @Test
    void soldOn20OctoberHeatingIsStillOpenAndNextSeptemberBelongsToTheNextTerm() {
        check(TWO_VISITS, "2026-10-20", CARRIES, "2026-10-20..2026-11-15", "2027-04-01..2027-06-15");
        check(TWO_VISITS, "2027-10-20", CARRIES, "2027-10-20..2027-11-15", "2028-04-01..2028-06-15");
    }

    @Test
    void soldOn16NovemberHeatingIsOverAndComesNextSeptember() {
        check(TWO_VISITS, "2026-11-16", CARRIES, "2027-04-01..2027-06-15", "2027-09-01..2027-11-15");
    }

    @Test
    void soldOn31JanuaryBothSeasonsAreAhead() {
        check(TWO_VISITS, "2027-01-31", CARRIES, "2027-04-01..2027-06-15", "2027-09-01..2027-11-15");
    }

    @Test
    void soldOn20MayCoolingIsStillOpenAndNextAprilBelongsToTheNextTerm() {
        check(TWO_VISITS, "2027-05-20", CARRIES, "2027-05-20..2027-06-15", "2027-09-01..2027-11-15");
    }

    @Test
    void aBusinessThatLeavesOpenSeasonsGivesTheWholeSeasonThatOpensInTheTerm() {
        check(TWO_VISITS, "2026-10-20", LEAVES, "2027-04-01..2027-06-15", "2027-09-01..2027-11-15");
        check(TWO_VISITS, "2027-05-20", LEAVES, "2027-09-01..2027-11-15", "2028-04-01..2028-06-15");
        check(TWO_VISITS, "2026-11-16", LEAVES, "2027-04-01..2027-06-15", "2027-09-01..2027-11-15");
    }

    @Test
    void theLastAndTheFirstDayOfASeasonCount() {
        check(TWO_VISITS, "2026-11-15", CARRIES, "2026-11-15..2026-11-15", "2027-04-01..2027-06-15");
        check(TWO_VISITS, "2026-09-01", CARRIES, "2026-09-01..2026-11-15", "2027-04-01..2027-06-15");
        check(TWO_VISITS, "2026-09-02", CARRIES, "2026-09-02..2026-11-15", "2027-04-01..2027-06-15");
    }

    @Test
    void aSeasonThatAnEarlierTermGaveIsNotGivenAgain() {
        History given = new History(null, List.of(window("2026-10-01..2026-11-15")));
        checkIn(TWO_VISITS, year("2026-10-20"), given, CARRIES, "2027-04-01..2027-06-15", "2027-09-01..2027-11-15");
        History done = History.doneOn(LocalDate.of(2026, 10, 3));
        checkIn(TWO_VISITS, year("2026-10-20"), done, CARRIES, "2027-04-01..2027-06-15", "2027-09-01..2027-11-15");
    }

    @Test
    void shortAndLongTermsGiveEachSeasonOnce() {
        check(
                TWO_VISITS,
                new Term(day("2026-11-01"), day("2027-05-01")),
                "2026-11-01..2026-11-15",
                "2027-04-01..2027-06-15");
        check(
                TWO_VISITS,
                new Term(day("2026-10-20"), day("2028-10-20")),
                "2026-10-20..2026-11-15",
                "2027-04-01..2027-06-15",
                "2027-09-01..2027-11-15",
                "2028-04-01..2028-06-15");
    }

    @Test
    void overYearsOfRenewalsEveryTermGivesTheSameNumberOfSeasons() {
        for (LocalDate sold = day("2026-01-01"); sold.isBefore(day("2027-01-01")); sold = sold.plusDays(1)) {
            for (SeasonRules rules : List.of(CARRIES, LEAVES)) {
                History history = History.NONE;
                Term term = Term.ofYear(sold);
                for (int renewal = 0; renewal < 4; renewal++) {
                    List<Window> windows = TWO_VISITS.windowsIn(term, history, rules);
                    assertEquals(2, windows.size(), sold + " " + term + " " + windows);
                    history = new History(
                            null,
                            Stream.concat(history.promised().stream(), windows.stream())
                                    .toList());
                    term = term.next();
                }
            }
        }
    }

    @Test
    void seasonsOverTheNewYearAndBeforeASeason() {
        check(EachSeason.of("winter"), "2027-01-31", CARRIES, "2027-01-31..2027-03-31");
        check(EachSeason.of("winter"), "2027-05-20", CARRIES, "2027-11-16..2028-03-31");
        Cadence beforeHeating = new BeforeSeason("winter", Period.ofWeeks(6));
        check(beforeHeating, "2026-10-20", CARRIES, "2026-10-20..2026-11-15");
        check(beforeHeating, "2026-11-16", CARRIES, "2027-10-05..2027-11-15");
        check(new BeforeSeason("summer", Period.parse("P2M15D")), "2027-01-31", CARRIES, "2027-04-01..2027-06-15");
        check(EachSeason.of("a season the business dropped"), "2027-01-31", CARRIES);
    }

    @Test
    void theOfferSaysWhatCanNoLongerBeKeptThisYear() {
        gone("2026-10-20", CARRIES, "cooling 2026-06-15 then 2027-04-01");
        gone("2026-11-16", CARRIES, "cooling 2026-06-15 then 2027-04-01", "heating 2026-11-15 then 2027-09-01");
        gone("2027-01-31", CARRIES);
        gone("2027-05-20", CARRIES);
        gone("2027-05-20", LEAVES, "cooling 2027-06-15 then 2028-04-01");
    }

    private static void check(Cadence cadence, String sold, SeasonRules rules, String... windows) {
        checkIn(cadence, year(sold), History.NONE, rules, windows);
    }

    private static void check(Cadence cadence, Term term, String... windows) {
        checkIn(cadence, term, History.NONE, CARRIES, windows);
    }

    private static void checkIn(Cadence cadence, Term term, History history, SeasonRules rules, String... windows) {
        assertEquals(
                List.of(windows),
                cadence.windowsIn(term, history, rules).stream()
                        .map(window -> window.from() + ".." + window.last())
                        .toList());
    }

    private static void gone(String sold, SeasonRules rules, String... rows) {
        assertEquals(
                List.of(rows),
                NoLongerThisYear.of(TWO_VISITS, year(sold), rules).stream()
                        .map(row -> row.season().code() + " " + row.gone().last() + " then "
                                + row.next().orElseThrow().from())
                        .toList());
    }

    private static Term year(String from) {
        return Term.ofYear(day(from));
    }

    private static Window window(String days) {
        return Window.ofDays(day(days.substring(0, 10)), day(days.substring(12)));
    }

    private static LocalDate day(String day) {
        return LocalDate.parse(day);
    }
}
