package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Cadence.BeforeSeason;
import changeover.contracts.catalogue.Cadence.CheckThenReplace;
import changeover.contracts.catalogue.Cadence.EachSeason;
import changeover.contracts.catalogue.Cadence.EveryMonths;
import changeover.contracts.catalogue.Cadence.OnRequest;
import changeover.contracts.catalogue.Cadence.TimesAYear;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CadenceTest {

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

    @Test
    void onRequestIsNeverDue() {
        check(new OnRequest(), "2027-01-31", CARRIES);
    }

    @Test
    void theOfferSaysWhatCanNoLongerBeKeptThisYear() {
        gone("2026-10-20", CARRIES, "cooling 2026-06-15 then 2027-04-01");
        gone("2026-11-16", CARRIES, "cooling 2026-06-15 then 2027-04-01", "heating 2026-11-15 then 2027-09-01");
        gone("2027-01-31", CARRIES);
        gone("2027-05-20", CARRIES);
        gone("2027-05-20", LEAVES, "cooling 2027-06-15 then 2028-04-01");
    }

    @Test
    void itReadsAsASentence() {
        says(
                new BeforeSeason("winter", Period.ofWeeks(6)),
                "before each heating season",
                "avant chaque saison de chauffage");
        says(
                TWO_VISITS,
                "at each cooling changeover and each heating changeover",
                "à chaque passage à la climatisation et à chaque passage au chauffage");
        says(new EveryMonths(12, 9, 15), "every 12 months, at most 15 months", "tous les 12 mois, au plus 15 mois");
        says(EveryMonths.exactly(1), "every month", "tous les mois");
        says(new TimesAYear(2), "twice a year", "2 fois par an");
        says(
                new CheckThenReplace(1, 3),
                "look every month, replace after 3 months at the latest",
                "vérifier tous les mois, remplacer après 3 mois au plus tard");
        says(new OnRequest(), "on request", "sur demande");
    }

    @Test
    void itIsStoredAsJsonAndReadBack() {
        json(TWO_VISITS, "{\"how\":\"each-season\",\"seasons\":[\"cooling\",\"heating\"]}");
        json(
                new BeforeSeason("winter", Period.parse("P2M15D")),
                "{\"how\":\"before-season\",\"season\":\"winter\",\"lead\":\"P2M15D\"}");
        json(new EveryMonths(12, 9, 15), "{\"how\":\"every-months\",\"months\":12,\"min\":9,\"max\":15}");
        json(new TimesAYear(2), "{\"how\":\"times-a-year\",\"times\":2}");
        json(new CheckThenReplace(1, 3), "{\"how\":\"check-then-replace\",\"checkMonths\":1,\"capMonths\":3}");
        json(new OnRequest(), "{\"how\":\"on-request\"}");
        for (String wrong : List.of(
                "",
                "{}",
                "[]",
                "{\"how\":\"weekly\"}",
                "{\"how\":\"every-months\",\"months\":0,\"min\":1,\"max\":1}",
                "{\"how\":\"times-a-year\"}",
                "{\"how\":\"each-season\",\"seasons\":[]}",
                "{\"how\":\"before-season\",\"season\":\"winter\",\"lead\":\"P0D\"}")) {
            assertThrows(IllegalArgumentException.class, () -> Cadence.ofJson(wrong), wrong);
        }
    }

    private static void check(Cadence cadence, String sold, SeasonRules rules, String... windows) {
        checkIn(cadence, year(sold), History.NONE, rules, windows);
    }

    private static void check(Cadence cadence, Term term, String... windows) {
        checkIn(cadence, term, History.NONE, CARRIES, windows);
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

    private static void gone(String sold, SeasonRules rules, String... rows) {
        assertEquals(
                List.of(rows),
                NoLongerThisYear.of(TWO_VISITS, year(sold), rules).stream()
                        .map(row -> row.season().code() + " " + row.gone().last() + " then "
                                + row.next().orElseThrow().from())
                        .toList());
    }

    private static void says(Cadence cadence, String english, String french) {
        assertEquals(english, cadence.sentence(Climate.cold()).en());
        assertEquals(french, cadence.sentence(Climate.cold()).fr());
    }

    private static void json(Cadence cadence, String json) {
        assertEquals(json, cadence.json());
        assertEquals(cadence, Cadence.ofJson(json));
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
