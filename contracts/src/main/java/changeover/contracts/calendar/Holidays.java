package changeover.contracts.calendar;

import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.Month.AUGUST;
import static java.time.Month.DECEMBER;
import static java.time.Month.FEBRUARY;
import static java.time.Month.JANUARY;
import static java.time.Month.JULY;
import static java.time.Month.JUNE;
import static java.time.Month.MAY;
import static java.time.Month.NOVEMBER;
import static java.time.Month.OCTOBER;
import static java.time.Month.SEPTEMBER;

import changeover.contracts.calendar.HolidayRule.AfterEaster;
import changeover.contracts.calendar.HolidayRule.Fixed;
import changeover.contracts.calendar.HolidayRule.FixedOnWorkday;
import changeover.contracts.calendar.HolidayRule.Nth;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * The days off that the law of a place gives, computed for any year; where no rule is known there are none and the
 * business writes down its own closed days.
 *
 * <p>United States: 5 U.S.C. 6103, also for a state. France: Code du travail, art. L3133-1. Canada: {@link CanadianHolidays}.
 */
public final class Holidays {

    /** What a Quebec employer chooses: Good Friday or Easter Monday (s. 60, 2nd paragraph). */
    public enum EasterDay {
        GOOD_FRIDAY,
        EASTER_MONDAY
    }

    private static final String QUEBEC = "CA-QC";

    /** By their codes. */
    public static final String GOOD_FRIDAY =
            CanadianHolidays.GOOD_FRIDAY.in(2000).code();

    public static final String EASTER_MONDAY =
            CanadianHolidays.EASTER_MONDAY.in(2000).code();

    private static final List<HolidayRow> UNITED_STATES = List.of(
            new HolidayRow("New Year’s Day", "jour de l’An", new FixedOnWorkday(JANUARY, 1)),
            new HolidayRow("Martin Luther King Jr. Day", "journée Martin Luther King", new Nth(3, MONDAY, JANUARY)),
            new HolidayRow("Washington’s Birthday", "anniversaire de Washington", new Nth(3, MONDAY, FEBRUARY)),
            new HolidayRow("Memorial Day", "jour du Souvenir", new Nth(-1, MONDAY, MAY)),
            new HolidayRow("Juneteenth", "fête de l’émancipation", new FixedOnWorkday(JUNE, 19)),
            new HolidayRow("Independence Day", "fête de l’Indépendance", new FixedOnWorkday(JULY, 4)),
            new HolidayRow("Labor Day", "fête du Travail", new Nth(1, MONDAY, SEPTEMBER)),
            new HolidayRow("Columbus Day", "jour de Christophe Colomb", new Nth(2, MONDAY, OCTOBER)),
            new HolidayRow("Veterans Day", "jour des Anciens Combattants", new FixedOnWorkday(NOVEMBER, 11)),
            new HolidayRow("Thanksgiving Day", "Action de grâce", new Nth(4, THURSDAY, NOVEMBER)),
            new HolidayRow("Christmas Day", "Noël", new FixedOnWorkday(DECEMBER, 25)));

    private static final List<HolidayRow> FRANCE = List.of(
            CanadianHolidays.NEW_YEAR,
            CanadianHolidays.EASTER_MONDAY,
            new HolidayRow("Labour Day", "fête du Travail", new Fixed(MAY, 1)),
            new HolidayRow("Victory Day", "victoire de 1945", new Fixed(MAY, 8)),
            new HolidayRow("Ascension Day", "Ascension", new AfterEaster(39)),
            new HolidayRow("Whit Monday", "lundi de Pentecôte", new AfterEaster(50)),
            new HolidayRow("Bastille Day", "fête nationale", new Fixed(JULY, 14)),
            new HolidayRow("Assumption Day", "Assomption", new Fixed(AUGUST, 15)),
            new HolidayRow("All Saints’ Day", "Toussaint", new Fixed(NOVEMBER, 1)),
            new HolidayRow("Armistice Day", "armistice de 1918", new Fixed(NOVEMBER, 11)),
            CanadianHolidays.CHRISTMAS);

    private Holidays() {}

    /** The days off of a place (ISO 3166-2, {@code CA-QC}; a country alone is fine) that fall due in a year, in order. */
    public static List<Holiday> in(String place, int year, EasterDay easterDay) {
        HolidayChoice chosen = easterDay == EasterDay.GOOD_FRIDAY
                ? HolidayChoice.USUAL
                : new HolidayChoice(Set.of(GOOD_FRIDAY), Set.of(EASTER_MONDAY));
        return in(place, year, leavesEasterToTheBusiness(place) ? chosen : HolidayChoice.USUAL);
    }

    public static List<Holiday> in(String place, int year) {
        return in(place, year, HolidayChoice.USUAL);
    }

    /** Those that a business of the place keeps. */
    public static List<Holiday> in(String place, int year, HolidayChoice chosen) {
        return offered(place, year).stream().filter(chosen::keeps).toList();
    }

    /** Those that a business of the place may choose among, in order: where the law leaves a choice, each side of it. */
    public static List<Holiday> offered(String place, int year) {
        List<Holiday> holidays = new ArrayList<>();
        rows(place).forEach(row -> holidays.add(row.in(year)));
        if (leavesEasterToTheBusiness(place)) {
            holidays.add(CanadianHolidays.GOOD_FRIDAY.in(year));
            holidays.add(CanadianHolidays.EASTER_MONDAY.in(year).byChoice());
        }
        holidays.sort(Comparator.comparing(Holiday::day));
        return List.copyOf(holidays);
    }

    /** Whether the law leaves it to the business which of the two days about Easter it gives. */
    public static boolean leavesEasterToTheBusiness(String place) {
        return place.equals(QUEBEC);
    }

    public static boolean isHoliday(String place, LocalDate day, EasterDay easterDay) {
        return in(place, day.getYear(), easterDay).stream()
                .anyMatch(holiday -> holiday.day().equals(day));
    }

    public static boolean isHoliday(String place, LocalDate day, HolidayChoice chosen) {
        return in(place, day.getYear(), chosen).stream()
                .anyMatch(holiday -> holiday.day().equals(day));
    }

    private static List<HolidayRow> rows(String place) {
        if (place.equals("US") || place.startsWith("US-")) {
            return UNITED_STATES;
        }
        if (place.equals("FR") || place.startsWith("FR-")) {
            return FRANCE;
        }
        return CanadianHolidays.of(place);
    }
}
