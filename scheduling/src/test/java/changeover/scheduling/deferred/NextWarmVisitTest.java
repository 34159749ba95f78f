package changeover.scheduling.deferred;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.LongestVisit;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Warm from 15 May to 15 September, as a cold climate has it. */
class NextWarmVisitTest {

    private static final Season WARM = Climate.cold().find(Climate.WARM).orElseThrow();
    private static final LocalDate PUT_OFF = LocalDate.of(2027, 4, 20);

    @Test
    void itJoinsTheNextVisitThatMayBeInWarmWeather() {
        check(
                "2 2027-09-01..2027-09-15 added",
                open(1, "2027-10-01", "2027-11-15"),
                open(2, "2027-09-01", "2027-11-15"));
        check(
                "1 2027-05-15..2027-06-15 added",
                open(1, "2027-05-01", "2027-06-15"),
                open(2, "2027-09-01", "2027-11-15"));
        check("none", open(1, "2027-10-01", "2027-11-15"), open(2, "2028-01-10", "2028-02-28"));
        check("none");
    }

    @Test
    void aVisitThatHasItsDayIsTakenOnlyIfThatDayIsWarm() {
        check("none", given(1, "2027-09-01", "2027-11-15", "2027-09-20"));
        check("1 2027-09-10..2027-09-10 added", given(1, "2027-09-01", "2027-11-15", "2027-09-10"));
        check(
                "2 2027-09-01..2027-09-15 added",
                given(1, "2027-05-01", "2027-06-15", "2027-05-12"),
                open(2, "2027-09-01", "2027-11-15"));
    }

    @Test
    void notBeforeTheDayOnWhichItWasPutOffAndNotWhereThereIsNoRoom() {
        check("none", given(1, "2027-04-01", "2027-06-15", "2027-04-20"));
        assertEquals("none", said(List.of(open(1, "2027-05-01", "2027-06-15")), new LongestVisit(65)));
        assertEquals(
                "1 2027-05-15..2027-06-15 added",
                said(List.of(open(1, "2027-05-01", "2027-06-15")), new LongestVisit(70)));
    }

    @Test
    void whereItIsReadAnywayNothingIsAdded() {
        check(
                "2 2027-05-15..2027-06-15 read there",
                open(1, "2027-05-01", "2027-06-15"),
                new NextWarmVisit.Open(new UUID(0, 2), window("2027-05-01", "2027-06-15"), null, 4, 60, true));
    }

    private static void check(String expected, NextWarmVisit.Open... visits) {
        assertEquals(expected, said(List.of(visits), LongestVisit.ANY));
    }

    private static String said(List<NextWarmVisit.Open> visits, LongestVisit longest) {
        return NextWarmVisit.of(visits, WARM, PUT_OFF, 10, longest)
                .map(next -> next.visitId().getLeastSignificantBits() + " "
                        + next.window().from() + ".." + next.window().last()
                        + (next.added() ? " added" : " read there"))
                .orElse("none");
    }

    private static NextWarmVisit.Open open(int id, String from, String last) {
        return new NextWarmVisit.Open(new UUID(0, id), window(from, last), null, 4, 60, false);
    }

    private static NextWarmVisit.Open given(int id, String from, String last, String day) {
        return new NextWarmVisit.Open(new UUID(0, id), window(from, last), LocalDate.parse(day), 4, 60, false);
    }

    private static Window window(String from, String last) {
        return Window.ofDays(LocalDate.parse(from), LocalDate.parse(last));
    }
}
