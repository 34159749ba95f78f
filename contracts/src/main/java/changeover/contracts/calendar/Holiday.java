package changeover.contracts.calendar;

import java.time.LocalDate;
import java.util.Locale;

/** A day on which the law of a place gives the trade's people the day off. */
public record Holiday(LocalDate day, String nameEn, String nameFr) {

    public String name(Locale locale) {
        return locale.getLanguage().equals("fr") ? nameFr : nameEn;
    }
}
