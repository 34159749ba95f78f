package changeover.contracts.calendar;

import java.time.LocalDate;
import java.util.Locale;

/**
 * A day on which the law of a place gives the trade's people the day off.
 *
 * @param isUsual whether a business there keeps it without having chosen
 */
public record Holiday(LocalDate day, String nameEn, String nameFr, boolean isUsual) {

    public String name(Locale locale) {
        return locale.getLanguage().equals("fr") ? nameFr : nameEn;
    }

    /** The same each year. */
    public String code() {
        return nameEn.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-");
    }

    /** Kept only where a business has chosen it. */
    Holiday byChoice() {
        return new Holiday(day, nameEn, nameFr, false);
    }
}
