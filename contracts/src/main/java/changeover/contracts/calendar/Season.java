package changeover.contracts.calendar;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A season comes once a year between two days of the calendar, both in; it is the business's own, by its climate.
 *
 * <p>A season whose last day stands before its first crosses the new year. A 29 February is 28 February in common years.
 *
 * @param code short name, unique in the business
 * @param changeover the changeover made in it, if it is one
 */
public record Season(
        String code,
        String nameEn,
        String nameFr,
        MonthDay first,
        MonthDay last,
        @Nullable Changeover changeover) {

    public String name(Locale locale) {
        return locale.getLanguage().equals("fr") ? nameFr : nameEn;
    }

    /** The season that opens in the given year. */
    public Window opening(int year) {
        int closes = last.isBefore(first) ? year + 1 : year;
        return Window.ofDays(first.atYear(year), last.atYear(closes));
    }

    /** The opening that is under way on the day, else the next. */
    public Window openingAt(LocalDate day) {
        for (int year = day.getYear() - 1; year <= day.getYear(); year++) {
            if (day.isBefore(opening(year).until())) {
                return opening(year);
            }
        }
        return opening(day.getYear() + 1);
    }

    /** Every season, whole, that has a day in the given window, in order. */
    public List<Window> meeting(Window window) {
        List<Window> seasons = new ArrayList<>();
        for (int year = window.from().getYear() - 1; year <= window.last().getYear(); year++) {
            Window season = opening(year);
            if (season.meets(window)) {
                seasons.add(season);
            }
        }
        return List.copyOf(seasons);
    }

    public boolean contains(LocalDate day) {
        return opening(day.getYear()).contains(day)
                || opening(day.getYear() - 1).contains(day);
    }
}
