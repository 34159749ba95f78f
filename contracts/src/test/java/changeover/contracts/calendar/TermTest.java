package changeover.contracts.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class TermTest {

    @Test
    void aYearEndsTheDayBeforeItsAnniversaryClippedToTheMonthsEnd() {
        year("2026-04-01", "2027-03-31", 365);
        year("2027-04-01", "2028-03-31", 366);
        year("2028-02-29", "2029-02-27", 365);
        year("2027-01-31", "2028-01-30", 365);
    }

    @Test
    void monthsAreClippedAndTheNextTermBeginsWhereThisOneEnds() {
        assertEquals(day("2027-02-27"), Term.ofMonths(day("2027-01-31"), 1).last());
        Term term = Term.ofYear(day("2026-10-20"));
        assertEquals(Term.ofYear(day("2027-10-20")), term.next());
        assertEquals(day("2029-02-28"), Term.ofYear(day("2028-02-29")).next().from());
    }

    @Test
    void elapsedDaysStayWithinTheTerm() {
        Term term = Term.ofYear(day("2026-04-01"));
        assertEquals(136, term.elapsed(day("2026-08-15")));
        assertEquals(0, term.elapsed(day("2026-03-01")));
        assertEquals(365, term.elapsed(day("2030-01-01")));
    }

    @Test
    void windowsHoldTheirFirstDayAndNotTheirUntil() {
        Window window = Window.ofDays(day("2026-04-01"), day("2026-06-15"));
        assertEquals(76, window.days());
        assertTrue(window.contains(day("2026-06-15")));
        assertEquals(
                Window.ofDay(day("2026-06-15")), window.since(day("2026-06-15")).orElseThrow());
        assertTrue(window.since(day("2026-06-16")).isEmpty());
        assertTrue(window.common(Window.ofDay(day("2026-06-16"))).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> Window.ofDays(day("2026-06-15"), day("2026-06-14")));
    }

    @Test
    void aSeasonMayCrossTheNewYear() {
        Season winter = Climate.cold().find(Climate.WINTER).orElseThrow();
        assertEquals(Window.ofDays(day("2026-11-16"), day("2027-03-31")), winter.opening(2026));
        assertTrue(winter.contains(day("2027-02-01")));
        assertEquals(
                List.of(winter.opening(2026), winter.opening(2027)),
                winter.meeting(Window.ofDays(day("2027-01-01"), day("2027-12-31"))));
        Season leap = new Season("leap", "a", "b", MonthDay.of(2, 29), MonthDay.of(2, 29), null);
        assertEquals(Window.ofDay(day("2027-02-28")), leap.opening(2027));
        assertEquals(Window.ofDay(day("2028-02-29")), leap.opening(2028));
    }

    @Test
    void daysReadAsPeopleWriteThem() {
        assertEquals("15\u00a0November 2026", DayInWords.of(day("2026-11-15")).in(Locale.CANADA));
        assertEquals("1er\u00a0avril 2026", DayInWords.of(day("2026-04-01")).in(Locale.CANADA_FRENCH));
        assertEquals("31\u00a0août 2026", DayInWords.of(day("2026-08-31")).in(Locale.CANADA_FRENCH));
    }

    private static void year(String from, String last, int days) {
        Term term = Term.ofYear(day(from));
        assertEquals(day(last), term.last());
        assertEquals(days, term.days());
    }

    private static LocalDate day(String day) {
        return LocalDate.parse(day);
    }
}
