package changeover.contracts.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Holidays.EasterDay;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Days as published by the places themselves. */
class HolidaysOutsideTest {

    /** CNESST, "Jours fériés", after the Act respecting labour standards, s. 60, and the National Holiday Act, s. 2. */
    @Test
    void quebec() {
        check("CA-QC", 2026, "01-01", "04-03", "05-18", "06-24", "07-01", "09-07", "10-12", "12-25");
        check("CA-QC", 2027, "01-01", "03-26", "05-24", "06-24", "07-01", "09-06", "10-11", "12-25");
        check("CA-QC", 2029, "01-01", "03-30", "05-21", "06-25", "07-02", "09-03", "10-08", "12-25");
    }

    /** The Monday that precedes 25 May is not 25 May, even where that is a Monday (2026): the trap of "before". */
    @Test
    void patriotsDayPrecedes25May() {
        assertEquals("National Patriots’ Day", on("2026-05-18").nameEn());
        assertFalse(Holidays.isHoliday("CA-QC", LocalDate.of(2026, 5, 25), EasterDay.GOOD_FRIDAY));
    }

    /** S. 60: Good Friday or Easter Monday, at the employer's option. */
    @Test
    void theEmployerChoosesTheEasterDay() {
        assertTrue(Holidays.isHoliday("CA-QC", LocalDate.of(2026, 4, 6), EasterDay.EASTER_MONDAY));
        assertFalse(Holidays.isHoliday("CA-QC", LocalDate.of(2026, 4, 6), EasterDay.GOOD_FRIDAY));
        assertTrue(Holidays.isHoliday("CA-QC", LocalDate.of(2027, 3, 29), EasterDay.EASTER_MONDAY));
    }

    /** Not days off by law in Quebec: 2 January, 30 September, 11 November, 26 December. */
    @Test
    void someDaysAreNoHolidaysInQuebec() {
        for (String day : List.of("2026-01-02", "2026-09-30", "2026-11-11", "2026-12-26")) {
            assertFalse(Holidays.isHoliday("CA-QC", LocalDate.parse(day), EasterDay.GOOD_FRIDAY), day);
        }
    }

    /** Government of Ontario, "Public holidays": Employment Standards Act, 2000, s. 1. */
    @Test
    void ontario() {
        check("CA-ON", 2026, "01-01", "02-16", "04-03", "05-18", "07-01", "09-07", "10-12", "12-25", "12-26");
    }

    /** US Office of Personnel Management, federal holidays 2026: 4 July is a Saturday, kept on Friday 3 July. */
    @Test
    void unitedStates() {
        check(
                "US-NY", 2026, "01-01", "01-19", "02-16", "05-25", "06-19", "07-03", "09-07", "10-12", "11-11", "11-26",
                "12-25");
    }

    /** Service-public.fr, jours fériés 2026. */
    @Test
    void france() {
        check(
                "FR", 2026, "01-01", "04-06", "05-01", "05-08", "05-14", "05-25", "07-14", "08-15", "11-01", "11-11",
                "12-25");
    }

    /** US Naval Observatory, dates of Easter. */
    @Test
    void easter() {
        for (String sunday :
                List.of("2024-03-31", "2025-04-20", "2026-04-05", "2027-03-28", "2038-04-25", "2008-03-23")) {
            assertEquals(
                    LocalDate.parse(sunday),
                    HolidayRule.easter(LocalDate.parse(sunday).getYear()));
        }
    }

    @Test
    void aPlaceWithoutARuleHasNoHolidaysOfItsOwn() {
        assertEquals(List.of(), Holidays.in("DE", 2026));
    }

    /** The places' own lists of general or statutory holidays for 2026, from memory. */
    @Test
    void theOtherProvincesAndTerritories() {
        check(
                "CA-BC", 2026, "01-01", "02-16", "04-03", "05-18", "07-01", "08-03", "09-07", "09-30", "10-12", "11-11",
                "12-25");
        check("CA-AB", 2026, "01-01", "02-16", "04-03", "05-18", "07-01", "09-07", "10-12", "11-11", "12-25");
        check("CA-SK", 2026, "01-01", "02-16", "04-03", "05-18", "07-01", "08-03", "09-07", "10-12", "11-11", "12-25");
        check("CA-MB", 2026, "01-01", "02-16", "04-03", "05-18", "07-01", "09-07", "09-30", "10-12", "12-25");
        check("CA-NB", 2026, "01-01", "02-16", "04-03", "07-01", "08-03", "09-07", "11-11", "12-25");
        check("CA-NS", 2026, "01-01", "02-16", "04-03", "07-01", "09-07", "12-25");
        check("CA-PE", 2026, "01-01", "02-16", "04-03", "07-01", "09-07", "09-30", "11-11", "12-25");
        check("CA-NL", 2026, "01-01", "04-03", "07-01", "09-07", "11-11", "12-25");
        check(
                "CA-YT", 2026, "01-01", "04-03", "05-18", "06-21", "07-01", "08-17", "09-07", "09-30", "10-12", "11-11",
                "12-25");
        check(
                "CA-NT", 2026, "01-01", "04-03", "05-18", "06-21", "07-01", "08-03", "09-07", "09-30", "10-12", "11-11",
                "12-25");
        check("CA-NU", 2026, "01-01", "04-03", "05-18", "07-01", "07-09", "08-03", "09-07", "10-12", "11-11", "12-25");
    }

    /** What a business chose stands in place of what is usual. */
    @Test
    void aBusinessMayWorkOnAHolidayAndGiveTheOtherDayOfEaster() {
        var chosen = new HolidayChoice(Set.of(Holidays.GOOD_FRIDAY, "columbus-day"), Set.of(Holidays.EASTER_MONDAY));
        assertTrue(Holidays.isHoliday("CA-QC", LocalDate.of(2026, 4, 6), chosen));
        assertFalse(Holidays.isHoliday("CA-QC", LocalDate.of(2026, 4, 3), chosen));
        assertFalse(Holidays.isHoliday("US-NY", LocalDate.of(2026, 10, 12), chosen));
        assertFalse(Holidays.isHoliday("CA-ON", LocalDate.of(2026, 4, 6), chosen), "no holiday of the place");
    }

    private static Holiday on(String day) {
        return Holidays.in("CA-QC", 2026).stream()
                .filter(holiday -> holiday.day().toString().equals(day))
                .findFirst()
                .orElseThrow();
    }

    private static void check(String place, int year, String... monthDays) {
        assertEquals(
                List.of(monthDays),
                Holidays.in(place, year).stream()
                        .map(holiday -> holiday.day().toString().substring(5))
                        .toList(),
                place + " " + year);
    }
}
