package changeover.billing.documents.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.documents.band.BandGeometry.Bracket;
import changeover.billing.documents.band.HomeYear.Done;
import changeover.billing.documents.band.HomeYear.HouseholdTask;
import changeover.billing.documents.band.HomeYear.Mark;
import changeover.billing.documents.band.HomeYear.Promise;
import changeover.billing.documents.band.HomeYear.Row;
import changeover.billing.documents.band.HomeYear.Standing;
import changeover.billing.documents.band.HomeYear.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The year band is drawn by its rules, whoever draws it. */
class BandGeometryTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 10, 7);

    @Test
    void twelveMonthsBeginOnTheFirstOfTheMonthInWhichTheTermStarts() {
        BandGeometry band = drawn(year(List.of(), List.of()));
        assertEquals(12, band.months().size());
        assertEquals(0, band.months().getFirst().from());
        assertEquals(1, band.months().getLast().until());
        assertEquals(30 / 365.0, band.months().getFirst().until(), 1e-9);
        assertEquals(
                List.of(2027),
                band.months().stream()
                        .filter(BandGeometry.MonthBox::yearChanges)
                        .map(BandGeometry.MonthBox::year)
                        .toList());
    }

    @Test
    void aBracketHoldsItsFirstAndItsLastDay() {
        Bracket bracket = only(promise("2026-04-01", "2026-04-30", null));
        assertEquals(0, bracket.from());
        assertEquals(30 / 365.0, bracket.until(), 1e-9);
        assertTrue(bracket.late());
    }

    @Test
    void aBracketThatLeavesTheYearHasNoTickThere() {
        Bracket bracket = only(promise("2027-03-01", "2027-05-31", null));
        assertEquals(1, bracket.until());
        assertTrue(bracket.opensHere());
        assertFalse(bracket.endsHere());
    }

    @Test
    void lateIsPastItsLastDayAndNotKept() {
        check(false, promise("2026-09-01", "2026-10-07", null));
        check(true, promise("2026-09-01", "2026-10-06", null));
        check(true, promise("2026-09-01", "2026-10-06", "planned"));
        check(false, promise("2026-05-01", "2026-06-15", "closed"));
    }

    @Test
    void promisesOfOneMachineOnTheSameDaysShareABracketAndOthersGetALaneEach() {
        BandGeometry band = drawn(year(
                List.of(
                        promise("2026-09-01", "2026-11-15", "planned"),
                        promise("2026-09-01", "2026-11-15", "planned"),
                        promise("2026-10-01", "2026-10-31", "planned")),
                List.of()));
        assertEquals(2, band.brackets().size());
        assertEquals(2, band.knots().size());
        assertEquals(12, band.brackets().get(1).y() - band.brackets().get(0).y(), 1e-9);
        assertEquals(band.brackets().get(1).y(), band.rings().get(1).stringEnd());
    }

    @Test
    void twoVisitsNearerThanFortyStandOnTwoLines() {
        HomeYear year = year(List.of(), List.of());
        HomeYear close = new HomeYear(
                year.begins(),
                TODAY,
                List.of(),
                List.of(),
                List.of(
                        new Visit("a", day("2026-10-15"), Standing.PENCILLED),
                        new Visit("b", day("2026-10-20"), Standing.PENCILLED)),
                List.of());
        BandGeometry band = drawn(close);
        assertEquals(40, band.rings().get(0).y() - band.rings().get(1).y(), 1e-9);
    }

    @Test
    void todaysLabelGoesWhereThereIsRoom() {
        assertTrue(drawn(year(List.of(), List.of())).today().getFirst().labelLeft(), "the visit stands at the right");
        HomeYear other = year(List.of(), List.of());
        HomeYear left = new HomeYear(
                other.begins(),
                TODAY,
                List.of(),
                List.of(),
                List.of(new Visit("a", day("2026-10-01"), Standing.CLOSED)),
                List.of());
        assertFalse(drawn(left).today().getFirst().labelLeft());
        assertTrue(drawn(new HomeYear(day("2020-01-01"), TODAY, List.of(), List.of(), List.of(), List.of()))
                .today()
                .isEmpty());
    }

    @Test
    void atMostFourOfTheHouseholdsTasksAreDrawn() {
        List<HouseholdTask> tasks = Stream.of("a", "b", "c", "d", "e")
                .map(name -> new HouseholdTask(name, List.of(new Mark(TODAY, Done.DONE))))
                .toList();
        assertEquals(4, drawn(year(List.of(), tasks)).household().size());
    }

    @Test
    void theYearIsSaidInOneSentenceInBothLanguages() {
        HomeYear year = year(
                List.of(
                        promise("2026-05-01", "2026-06-15", "closed"),
                        promise("2026-09-01", "2026-10-06", "planned"),
                        promise("2026-09-01", "2026-11-15", "planned"),
                        promise("2027-01-01", "2027-02-28", null)),
                List.of());
        assertEquals(
                "Four promises: one kept, one late, one with a day, one without a day; next visit 15\u00a0October.",
                YearTable.of(year, Locale.CANADA).summary());
        YearTable french = YearTable.of(year, Locale.CANADA_FRENCH);
        assertEquals(
                "Quatre promesses\u00a0: une tenue, une en retard, une avec un jour, une sans jour;"
                        + " prochaine visite le 15\u00a0octobre.",
                french.summary());
        assertEquals(
                List.of(
                        "En retard de 1\u00a0jour, la visite vient 9\u00a0jours après",
                        "Tenu",
                        "Tenu si le jour tient",
                        "Pas encore de jour"),
                french.lines().stream().map(YearTable.Line::standing).toList());
    }

    private static void check(boolean late, Promise promise) {
        assertEquals(late, only(promise).late(), promise.toString());
    }

    private static Bracket only(Promise promise) {
        return drawn(year(List.of(promise), List.of())).brackets().getFirst();
    }

    private static BandGeometry drawn(HomeYear year) {
        return BandGeometry.of(year, BandShape.DESK);
    }

    private static HomeYear year(List<Promise> promises, List<HouseholdTask> household) {
        return new HomeYear(
                day("2026-04-15"),
                TODAY,
                List.of(),
                List.of(new Row("Outdoor heat pump", promises)),
                List.of(
                        new Visit("closed", day("2026-05-27"), Standing.CLOSED),
                        new Visit("planned", day("2026-10-15"), Standing.PENCILLED)),
                household);
    }

    private static Promise promise(String first, String last, @Nullable String visit) {
        return new Promise("checked", day(first), day(last), visit);
    }

    private static LocalDate day(String iso) {
        return LocalDate.parse(iso);
    }
}
