package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Task;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class PlanTrialTest {

    private static final List<Machine> HOME = List.of(
            machine(1, "outdoor-heat-pump", Map.of("drive", "inverter")),
            machine(2, "air-handler", Map.of()),
            machine(3, "filter-slot", Map.of("thickness", "4")),
            machine(4, "condensate", Map.of("pump", "no", "serves", "all-year")),
            machine(5, "humidifier-bypass", Map.of("damper", "manual")),
            machine(6, "hrv", Map.of()));

    private static final List<Task> ALL = Catalogue.shipped().tasks().stream().toList();

    @Test
    void twoVisitsKeepEveryPromiseOfAHomeWhateverTheDayItIsSold() {
        for (LocalDate sold = day("2026-01-01"); sold.isBefore(day("2027-01-01")); sold = sold.plusDays(1)) {
            PlanTrial trial = trial(sold, 2);
            assertTrue(trial.keepsItsPromises(), sold + ": " + trial.missing());
            assertEquals(2, trial.visitsNeeded(), sold.toString());
            assertEquals(2, trial.visits().visits().size());
        }
    }

    @Test
    void twoVisitsSoldOn20OctoberAndOn20May() {
        windows("2026-10-20", 2, "2026-10-20..2026-11-15", "2027-05-15..2027-06-15");
        windows("2027-05-20", 2, "2027-05-20..2027-06-15", "2027-09-01..2027-11-15");
        windows("2026-11-16", 2, "2027-05-15..2027-06-15", "2027-09-01..2027-11-15");
        windows("2027-01-31", 2, "2027-05-15..2027-06-15", "2027-09-01..2027-11-15");
    }

    @Test
    void oneVisitNamesWhatIsMissing() {
        PlanTrial trial = trial(day("2026-01-15"), 1);
        assertFalse(trial.keepsItsPromises());
        assertTrue(trial.missing().stream()
                .anyMatch(unkept -> unkept.promise().taskCode().equals("drain-prove")));
        assertEquals(
                "It would take one more visit than the plan sells, between 15\u00a0May 2026 and 15\u00a0June 2026.",
                trial.missing().stream()
                        .filter(unkept -> unkept.promise().taskCode().equals("cooling-split"))
                        .findFirst()
                        .orElseThrow()
                        .why()
                        .en());
    }

    @Test
    void moreVisitsThanNeededStandInTheirSeason() {
        windows("2026-11-16", 3, "2027-01-10..2027-02-28", "2027-05-15..2027-06-15", "2027-09-01..2027-11-15");
        PlanTrial wide = trial(tasks("coil-dust"), day("2026-12-01"), 2);
        assertEquals(1, wide.visitsNeeded());
        assertEquals(
                List.of("2027-04-01..2027-06-15", "2027-09-01..2027-11-15"),
                wide.visits().visits().stream().map(PlanTrialTest::said).toList());
    }

    @Test
    void aPlanWithNothingForTheHomeStillGivesItsVisits() {
        PlanTrial trial = trial(tasks("rooftop-belts"), day("2026-12-01"), 2);
        assertEquals(0, trial.visitsNeeded());
        assertEquals(2, trial.visits().visits().size());
        assertEquals(0, trial.technicianMinutes());
    }

    @Test
    void aYearsMinutesAndParts() {
        PlanTrial trial =
                trial(tasks("coil-dust", "humidifier-pad", "filter-deep", "exchanger-core-hrv"), day("2026-12-01"), 2);
        assertEquals(15 + 6 + 2 * 20, trial.technicianMinutes());
        assertEquals(12 * 5, trial.householdMinutes());
        assertEquals(Map.of("filter", new BigDecimal(2), "humidifier-pad", BigDecimal.ONE), trial.parts());
    }

    @Test
    void theReasonSaysHowOftenTheLastTimeAndTheLastDay() {
        reason(
                "coil-dust",
                History.doneOn(day("2025-10-03")),
                "Every 12 months, at most 15 months, last done 3\u00a0October 2025; by 3\u00a0January 2027.",
                "Tous les 12 mois, au plus 15 mois, fait la dernière fois le 3\u00a0octobre 2025; au plus tard le"
                        + " 3\u00a0janvier 2027.");
        reason(
                "trap-clean",
                History.NONE,
                "Before each cooling season; by 15\u00a0June 2026.",
                "Avant chaque saison de climatisation; au plus tard le 15\u00a0juin 2026.");
    }

    private static void reason(String task, History history, String english, String french) {
        Promise promise = Promises.in(
                        Term.ofYear(day("2026-01-15")),
                        List.of(PromisedTask.of(
                                new UUID(1, 2), Catalogue.shipped().task(task), history)),
                        SeasonRules.USUAL)
                .getFirst();
        assertEquals(english, promise.reason().en());
        assertEquals(french, promise.reason().fr());
    }

    private static void windows(String sold, int visits, String... windows) {
        assertEquals(
                List.of(windows),
                trial(day(sold), visits).visits().visits().stream()
                        .map(PlanTrialTest::said)
                        .toList());
    }

    private static PlanTrial trial(LocalDate sold, int visits) {
        return trial(ALL, sold, visits);
    }

    private static PlanTrial trial(List<Task> tasks, LocalDate sold, int visits) {
        return PlanTrial.of(tasks, HOME, visits, Term.ofYear(sold), SeasonRules.USUAL, LongestVisit.ANY);
    }

    private static List<Task> tasks(String... codes) {
        return List.of(codes).stream().map(Catalogue.shipped()::task).toList();
    }

    private static String said(PlannedVisit visit) {
        return visit.window().from() + ".." + visit.window().last();
    }

    private static Machine machine(int number, String kind, Map<String, String> fits) {
        return new Machine(new UUID(1, number), kind, fits);
    }

    private static LocalDate day(String day) {
        return LocalDate.parse(day);
    }
}
