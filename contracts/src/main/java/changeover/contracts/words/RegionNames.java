package changeover.contracts.words;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/** Provinces, territories and states are called by their names, never by their codes (ISO 3166-2). */
public final class RegionNames {

    private static final ResourceBundle ENGLISH = bundle(Locale.ENGLISH);
    private static final ResourceBundle FRENCH = bundle(Locale.FRENCH);

    /** A code without its country is one of these, the first that has it. */
    private static final List<String> COUNTRIES = List.of("", "CA-", "US-");

    private RegionNames() {}

    private static ResourceBundle bundle(Locale language) {
        return ResourceBundle.getBundle(
                "changeover.regions",
                language,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /**
     * The name of a place.
     *
     * @param code {@code CA-QC}, or {@code QC} alone; one that has no name here stands as it was given
     */
    public static Wording of(String code) {
        for (String country : COUNTRIES) {
            String key = country + code.strip();
            if (ENGLISH.containsKey(key)) {
                return new Wording(ENGLISH.getString(key), FRENCH.getString(key));
            }
        }
        return new Wording(code, code);
    }
}
