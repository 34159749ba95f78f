package changeover.billing.documents.band;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/** How a day is written: "7 Oct", "7 October 2026"; in French "1er avril", "7 oct. 2026". */
public final class DayWords {

    private static final List<String> SHORT_ENGLISH =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
    private static final List<String> SHORT_FRENCH =
            List.of("janv.", "févr.", "mars", "avr.", "mai", "juin", "juill.", "août", "sept.", "oct.", "nov.", "déc.");
    private static final DayWords ENGLISH = new DayWords(Locale.ENGLISH);
    private static final DayWords FRENCH = new DayWords(Locale.CANADA_FRENCH);

    private final Locale locale;

    private DayWords(Locale locale) {
        this.locale = locale;
    }

    /** The words of the language nearest to the locale: French or English. */
    public static DayWords of(Locale locale) {
        return locale.getLanguage().equals("fr") ? FRENCH : ENGLISH;
    }

    public boolean french() {
        return this == FRENCH;
    }

    /** "Oct", "oct." */
    public String month(Month month) {
        return (french() ? SHORT_FRENCH : SHORT_ENGLISH).get(month.getValue() - 1);
    }

    /** "O" in both languages. */
    public String initial(Month month) {
        return month(month).substring(0, 1).toUpperCase(locale);
    }

    /** "7 Oct", "7 oct." */
    public String brief(LocalDate day) {
        return dayOfMonth(day) + "\u00a0" + month(day.getMonth());
    }

    /** "7 Oct 2026", "7 oct. 2026" */
    public String briefWithYear(LocalDate day) {
        return brief(day) + " " + day.getYear();
    }

    /** "7 October", "7 octobre" */
    public String plain(LocalDate day) {
        return dayOfMonth(day) + "\u00a0" + day.getMonth().getDisplayName(TextStyle.FULL, locale);
    }

    /** "7 October 2026", "7 octobre 2026" */
    public String full(LocalDate day) {
        return plain(day) + " " + day.getYear();
    }

    /** "Wednesday 7 October", "mercredi 7 octobre" */
    public String withWeekday(LocalDate day) {
        return day.getDayOfWeek().getDisplayName(TextStyle.FULL, locale) + " " + plain(day);
    }

    private String dayOfMonth(LocalDate day) {
        return french() && day.getDayOfMonth() == 1 ? "1er" : String.valueOf(day.getDayOfMonth());
    }
}
