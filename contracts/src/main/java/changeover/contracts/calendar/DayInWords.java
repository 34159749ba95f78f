package changeover.contracts.calendar;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;

/** A day as people write it: "15 November 2026", « 15 novembre 2026 », « 1er avril ». */
public final class DayInWords {

    private static final List<String> ENGLISH = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December");
    private static final List<String> FRENCH = List.of(
            "janvier",
            "février",
            "mars",
            "avril",
            "mai",
            "juin",
            "juillet",
            "août",
            "septembre",
            "octobre",
            "novembre",
            "décembre");

    private DayInWords() {}

    public static Wording of(LocalDate day) {
        Wording monthDay = of(MonthDay.from(day));
        return new Wording(monthDay.en() + " " + day.getYear(), monthDay.fr() + " " + day.getYear());
    }

    public static Wording of(MonthDay day) {
        int number = day.getDayOfMonth();
        return new Wording(
                number + "\u00a0" + ENGLISH.get(day.getMonthValue() - 1),
                (number == 1 ? "1er" : String.valueOf(number)) + "\u00a0" + FRENCH.get(day.getMonthValue() - 1));
    }
}
