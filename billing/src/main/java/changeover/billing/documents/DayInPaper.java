package changeover.billing.documents;

import java.time.LocalDate;
import java.util.Locale;

/** A day as papers and letters write it: 31 mars 2027, 31 March 2027. */
public final class DayInPaper {

    private DayInPaper() {}

    public static String of(LocalDate day, Locale locale) {
        return new Figures(Words.in(locale)).day(day);
    }
}
