package changeover.contracts.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;

/** How the day of a holiday is found in a year. */
sealed interface HolidayRule {

    /** The same day each year. */
    record Fixed(Month month, int day) implements HolidayRule {}

    /** The same day each year; when that is a Sunday, the Monday after it. */
    record FixedNotSunday(Month month, int day) implements HolidayRule {}

    /** The same day each year; a Saturday is kept on the Friday before it, a Sunday on the Monday after it. */
    record FixedOnWorkday(Month month, int day) implements HolidayRule {}

    /** The first, second … weekday of a month; the last one when {@code ordinal} is -1. */
    record Nth(int ordinal, DayOfWeek weekday, Month month) implements HolidayRule {}

    /** The Monday strictly before a day: when that day is itself a Monday, a whole week earlier. */
    record MondayPreceding(Month month, int day) implements HolidayRule {}

    /** So many days after Easter Sunday. */
    record AfterEaster(int days) implements HolidayRule {}

    default LocalDate in(int year) {
        return switch (this) {
            case Fixed(Month month, int day) -> LocalDate.of(year, month, day);
            case FixedNotSunday(Month month, int day) -> {
                LocalDate date = LocalDate.of(year, month, day);
                yield date.getDayOfWeek() == DayOfWeek.SUNDAY ? date.plusDays(1) : date;
            }
            case FixedOnWorkday(Month month, int day) -> {
                LocalDate date = LocalDate.of(year, month, day);
                yield switch (date.getDayOfWeek()) {
                    case SATURDAY -> date.minusDays(1);
                    case SUNDAY -> date.plusDays(1);
                    case MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY -> date;
                };
            }
            case Nth(int ordinal, DayOfWeek weekday, Month month) ->
                LocalDate.of(year, month, 1).with(TemporalAdjusters.dayOfWeekInMonth(ordinal, weekday));
            case MondayPreceding(Month month, int day) ->
                LocalDate.of(year, month, day).with(TemporalAdjusters.previous(DayOfWeek.MONDAY));
            case AfterEaster(int days) -> easter(year).plusDays(days);
        };
    }

    /** Easter Sunday of the Gregorian calendar: the "anonymous" computus, Nature, 20 April 1876. */
    static LocalDate easter(int year) {
        int a = year % 19;
        int b = year / 100;
        int c = year % 100;
        int d = b / 4;
        int e = b % 4;
        int f = (b + 8) / 25;
        int g = (b - f + 1) / 3;
        int h = (19 * a + b - d - g + 15) % 30;
        int i = c / 4;
        int k = c % 4;
        int l = (32 + 2 * e + 2 * i - h - k) % 7;
        int m = (a + 11 * h + 22 * l) / 451;
        int monthAndDay = h + l - 7 * m + 114;
        return LocalDate.of(year, monthAndDay / 31, monthAndDay % 31 + 1);
    }
}
