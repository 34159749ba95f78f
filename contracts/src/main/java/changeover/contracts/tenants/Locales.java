package changeover.contracts.tenants;

import java.util.Locale;

/** The two languages of the house: Canadian English and the French of Quebec. */
public final class Locales {

    public static final Locale ENGLISH = Locale.CANADA;
    public static final Locale FRENCH = Locale.CANADA_FRENCH;

    private Locales() {}

    /** @param language "en" or "fr", with or without a country; anything else is read as English */
    public static Locale of(String language) {
        return language.startsWith("fr") ? FRENCH : ENGLISH;
    }
}
