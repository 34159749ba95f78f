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
import changeover.contracts.calendar.HolidayRule.FixedNotSunday;
import changeover.contracts.calendar.HolidayRule.FixedOnWorkday;
import changeover.contracts.calendar.HolidayRule.MondayPreceding;
import changeover.contracts.calendar.HolidayRule.Nth;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The days off that the law of a place gives, computed for any year; where no rule is known there are none and the
 * business writes down its own closed days.
 *
 * <p>Quebec: Act respecting labour standards, s. 60, and National Holiday Act, s. 2 (24 June, the 25th when it is a
 * Sunday). Ontario: Employment Standards Act, 2000, s. 1, "public holiday". United States: 5 U.S.C. 6103, also for a
 * state. France: Code du travail, art. L3133-1.
 */
public final class Holidays {

    /** What a Quebec employer chooses: Good Friday or Easter Monday (s. 60, 2nd paragraph). */
    public enum EasterDay {
        GOOD_FRIDAY,
        EASTER_MONDAY
    }

    private record Row(String nameEn, String nameFr, HolidayRule rule) {}

    private static final Row NEW_YEAR = new Row("New Year’s Day", "jour de l’An", new Fixed(JANUARY, 1));
    private static final Row GOOD_FRIDAY = new Row("Good Friday", "Vendredi saint", new AfterEaster(-2));
    private static final Row EASTER_MONDAY = new Row("Easter Monday", "lundi de Pâques", new AfterEaster(1));
    private static final Row LABOUR = new Row("Labour Day", "fête du Travail", new Nth(1, MONDAY, SEPTEMBER));
    private static final Row THANKSGIVING = new Row("Thanksgiving", "Action de grâce", new Nth(2, MONDAY, OCTOBER));
    private static final Row CHRISTMAS = new Row("Christmas Day", "Noël", new Fixed(DECEMBER, 25));

    private static final List<Row> QUEBEC = List.of(
            NEW_YEAR,
            new Row("National Patriots’ Day", "Journée nationale des patriotes", new MondayPreceding(MAY, 25)),
            new Row("Quebec’s National Holiday", "fête nationale du Québec", new FixedNotSunday(JUNE, 24)),
            new Row("Canada Day", "fête du Canada", new FixedNotSunday(JULY, 1)),
            LABOUR,
            THANKSGIVING,
            CHRISTMAS);

    private static final List<Row> ONTARIO = List.of(
            NEW_YEAR,
            new Row("Family Day", "jour de la Famille", new Nth(3, MONDAY, FEBRUARY)),
            GOOD_FRIDAY,
            new Row("Victoria Day", "fête de la Reine", new MondayPreceding(MAY, 25)),
            new Row("Canada Day", "fête du Canada", new Fixed(JULY, 1)),
            LABOUR,
            THANKSGIVING,
            CHRISTMAS,
            new Row("Boxing Day", "lendemain de Noël", new Fixed(DECEMBER, 26)));

    private static final List<Row> UNITED_STATES = List.of(
            new Row("New Year’s Day", "jour de l’An", new FixedOnWorkday(JANUARY, 1)),
            new Row("Martin Luther King Jr. Day", "journée Martin Luther King", new Nth(3, MONDAY, JANUARY)),
            new Row("Washington’s Birthday", "anniversaire de Washington", new Nth(3, MONDAY, FEBRUARY)),
            new Row("Memorial Day", "jour du Souvenir", new Nth(-1, MONDAY, MAY)),
            new Row("Juneteenth", "fête de l’émancipation", new FixedOnWorkday(JUNE, 19)),
            new Row("Independence Day", "fête de l’Indépendance", new FixedOnWorkday(JULY, 4)),
            new Row("Labor Day", "fête du Travail", new Nth(1, MONDAY, SEPTEMBER)),
            new Row("Columbus Day", "jour de Christophe Colomb", new Nth(2, MONDAY, OCTOBER)),
            new Row("Veterans Day", "jour des Anciens Combattants", new FixedOnWorkday(NOVEMBER, 11)),
            new Row("Thanksgiving Day", "Action de grâce", new Nth(4, THURSDAY, NOVEMBER)),
            new Row("Christmas Day", "Noël", new FixedOnWorkday(DECEMBER, 25)));

    private static final List<Row> FRANCE = List.of(
            NEW_YEAR,
            EASTER_MONDAY,
            new Row("Labour Day", "fête du Travail", new Fixed(MAY, 1)),
            new Row("Victory Day", "victoire de 1945", new Fixed(MAY, 8)),
            new Row("Ascension Day", "Ascension", new AfterEaster(39)),
            new Row("Whit Monday", "lundi de Pentecôte", new AfterEaster(50)),
            new Row("Bastille Day", "fête nationale", new Fixed(JULY, 14)),
            new Row("Assumption Day", "Assomption", new Fixed(AUGUST, 15)),
            new Row("All Saints’ Day", "Toussaint", new Fixed(NOVEMBER, 1)),
            new Row("Armistice Day", "armistice de 1918", new Fixed(NOVEMBER, 11)),
            CHRISTMAS);

    private Holidays() {}

    /** The days off of a place (ISO 3166-2, {@code CA-QC}; a country alone is fine) that fall due in a year, in order. */
    public static List<Holiday> in(String place, int year, EasterDay easterDay) {
        List<Holiday> holidays = new ArrayList<>();
        for (Row row : rows(place)) {
            holidays.add(new Holiday(row.rule.in(year), row.nameEn, row.nameFr));
        }
        if (place.equals("CA-QC")) {
            Row chosen = easterDay == EasterDay.GOOD_FRIDAY ? GOOD_FRIDAY : EASTER_MONDAY;
            holidays.add(new Holiday(chosen.rule.in(year), chosen.nameEn, chosen.nameFr));
        }
        holidays.sort(Comparator.comparing(Holiday::day));
        return List.copyOf(holidays);
    }

    public static List<Holiday> in(String place, int year) {
        return in(place, year, EasterDay.GOOD_FRIDAY);
    }

    public static boolean isHoliday(String place, LocalDate day, EasterDay easterDay) {
        return in(place, day.getYear(), easterDay).stream()
                .anyMatch(holiday -> holiday.day().equals(day));
    }

    private static List<Row> rows(String place) {
        if (place.equals("CA-QC")) {
            return QUEBEC;
        }
        if (place.equals("CA-ON")) {
            return ONTARIO;
        }
        if (place.equals("US") || place.startsWith("US-")) {
            return UNITED_STATES;
        }
        if (place.equals("FR") || place.startsWith("FR-")) {
            return FRANCE;
        }
        return List.of();
    }
}
