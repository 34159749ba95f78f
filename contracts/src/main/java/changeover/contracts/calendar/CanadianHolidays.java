package changeover.contracts.calendar;

import static java.time.DayOfWeek.MONDAY;
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
import changeover.contracts.calendar.HolidayRule.MondayPreceding;
import changeover.contracts.calendar.HolidayRule.Nth;
import java.util.List;
import java.util.Map;

/**
 * The days off of Canada's provinces and territories. Quebec: Act respecting labour standards, s. 60, and National Holiday
 * Act, s. 2 (24 June, the 25th when it is a Sunday). Ontario: Employment Standards Act, 2000, s. 1, "public holiday". The
 * others: their labour or employment standards acts, from memory; a day that no such act gives to everybody is left out.
 */
final class CanadianHolidays {

    static final HolidayRow NEW_YEAR = new HolidayRow("New Year’s Day", "jour de l’An", new Fixed(JANUARY, 1));
    static final HolidayRow GOOD_FRIDAY = new HolidayRow("Good Friday", "Vendredi saint", new AfterEaster(-2));
    static final HolidayRow EASTER_MONDAY = new HolidayRow("Easter Monday", "lundi de Pâques", new AfterEaster(1));
    static final HolidayRow FAMILY = february("Family Day", "jour de la Famille");
    static final HolidayRow VICTORIA = new HolidayRow("Victoria Day", "fête de la Reine", new MondayPreceding(MAY, 25));
    static final HolidayRow FIRST_PEOPLES = new HolidayRow(
            "National Indigenous Peoples Day", "Journée nationale des peuples autochtones", new Fixed(JUNE, 21));
    static final HolidayRow CANADA = new HolidayRow("Canada Day", "fête du Canada", new Fixed(JULY, 1));
    static final HolidayRow CANADA_NOT_SUNDAY =
            new HolidayRow("Canada Day", "fête du Canada", new FixedNotSunday(JULY, 1));
    static final HolidayRow LABOUR = new HolidayRow("Labour Day", "fête du Travail", new Nth(1, MONDAY, SEPTEMBER));
    static final HolidayRow TRUTH = new HolidayRow(
            "National Day for Truth and Reconciliation",
            "Journée nationale de la vérité et de la réconciliation",
            new Fixed(SEPTEMBER, 30));
    static final HolidayRow THANKSGIVING =
            new HolidayRow("Thanksgiving", "Action de grâce", new Nth(2, MONDAY, OCTOBER));
    static final HolidayRow REMEMBRANCE =
            new HolidayRow("Remembrance Day", "jour du Souvenir", new Fixed(NOVEMBER, 11));
    static final HolidayRow CHRISTMAS = new HolidayRow("Christmas Day", "Noël", new Fixed(DECEMBER, 25));

    private static final Map<String, List<HolidayRow>> BY_PLACE = Map.ofEntries(
            Map.entry(
                    "CA-QC",
                    List.of(
                            NEW_YEAR,
                            new HolidayRow(
                                    "National Patriots’ Day",
                                    "Journée nationale des patriotes",
                                    new MondayPreceding(MAY, 25)),
                            new HolidayRow(
                                    "Quebec’s National Holiday",
                                    "fête nationale du Québec",
                                    new FixedNotSunday(JUNE, 24)),
                            CANADA_NOT_SUNDAY,
                            LABOUR,
                            THANKSGIVING,
                            CHRISTMAS)),
            Map.entry(
                    "CA-ON",
                    List.of(
                            NEW_YEAR,
                            FAMILY,
                            GOOD_FRIDAY,
                            VICTORIA,
                            CANADA,
                            LABOUR,
                            THANKSGIVING,
                            CHRISTMAS,
                            new HolidayRow("Boxing Day", "lendemain de Noël", new Fixed(DECEMBER, 26)))),
            Map.entry(
                    "CA-BC",
                    List.of(
                            NEW_YEAR,
                            FAMILY,
                            GOOD_FRIDAY,
                            VICTORIA,
                            CANADA,
                            august("British Columbia Day", "fête de la Colombie-Britannique"),
                            LABOUR,
                            TRUTH,
                            THANKSGIVING,
                            REMEMBRANCE,
                            CHRISTMAS)),
            Map.entry(
                    "CA-AB",
                    List.of(
                            NEW_YEAR,
                            FAMILY,
                            GOOD_FRIDAY,
                            VICTORIA,
                            CANADA,
                            LABOUR,
                            THANKSGIVING,
                            REMEMBRANCE,
                            CHRISTMAS)),
            Map.entry(
                    "CA-SK",
                    List.of(
                            NEW_YEAR,
                            FAMILY,
                            GOOD_FRIDAY,
                            VICTORIA,
                            CANADA,
                            august("Saskatchewan Day", "fête de la Saskatchewan"),
                            LABOUR,
                            THANKSGIVING,
                            REMEMBRANCE,
                            CHRISTMAS)),
            Map.entry(
                    "CA-MB",
                    List.of(
                            NEW_YEAR,
                            february("Louis Riel Day", "journée Louis Riel"),
                            GOOD_FRIDAY,
                            VICTORIA,
                            CANADA_NOT_SUNDAY,
                            LABOUR,
                            TRUTH,
                            THANKSGIVING,
                            CHRISTMAS)),
            Map.entry(
                    "CA-NB",
                    List.of(
                            NEW_YEAR,
                            FAMILY,
                            GOOD_FRIDAY,
                            CANADA,
                            august("New Brunswick Day", "fête du Nouveau-Brunswick"),
                            LABOUR,
                            REMEMBRANCE,
                            CHRISTMAS)),
            Map.entry(
                    "CA-NS",
                    List.of(
                            NEW_YEAR,
                            february("Heritage Day", "fête du Patrimoine"),
                            GOOD_FRIDAY,
                            CANADA,
                            LABOUR,
                            CHRISTMAS)),
            Map.entry(
                    "CA-PE",
                    List.of(
                            NEW_YEAR,
                            february("Islander Day", "fête des Insulaires"),
                            GOOD_FRIDAY,
                            CANADA,
                            LABOUR,
                            TRUTH,
                            REMEMBRANCE,
                            CHRISTMAS)),
            Map.entry(
                    "CA-NL",
                    List.of(
                            NEW_YEAR,
                            GOOD_FRIDAY,
                            new HolidayRow("Memorial Day", "jour commémoratif", new Fixed(JULY, 1)),
                            LABOUR,
                            REMEMBRANCE,
                            CHRISTMAS)),
            Map.entry(
                    "CA-YT",
                    List.of(
                            NEW_YEAR,
                            GOOD_FRIDAY,
                            VICTORIA,
                            FIRST_PEOPLES,
                            CANADA,
                            new HolidayRow("Discovery Day", "jour de la Découverte", new Nth(3, MONDAY, AUGUST)),
                            LABOUR,
                            TRUTH,
                            THANKSGIVING,
                            REMEMBRANCE,
                            CHRISTMAS)),
            Map.entry(
                    "CA-NT",
                    List.of(
                            NEW_YEAR,
                            GOOD_FRIDAY,
                            VICTORIA,
                            FIRST_PEOPLES,
                            CANADA,
                            august("Civic Holiday", "congé civique"),
                            LABOUR,
                            TRUTH,
                            THANKSGIVING,
                            REMEMBRANCE,
                            CHRISTMAS)),
            Map.entry(
                    "CA-NU",
                    List.of(
                            NEW_YEAR,
                            GOOD_FRIDAY,
                            VICTORIA,
                            CANADA,
                            new HolidayRow("Nunavut Day", "fête du Nunavut", new Fixed(JULY, 9)),
                            august("Civic Holiday", "congé civique"),
                            LABOUR,
                            THANKSGIVING,
                            REMEMBRANCE,
                            CHRISTMAS)));

    private CanadianHolidays() {}

    /** @param place ISO 3166-2; none where it is no province or territory */
    static List<HolidayRow> of(String place) {
        return BY_PLACE.getOrDefault(place, List.of());
    }

    private static HolidayRow february(String en, String fr) {
        return new HolidayRow(en, fr, new Nth(3, MONDAY, FEBRUARY));
    }

    private static HolidayRow august(String en, String fr) {
        return new HolidayRow(en, fr, new Nth(1, MONDAY, AUGUST));
    }
}
