package changeover.contracts.customers;

import java.util.Locale;
import java.util.Set;

/** A country is written as ISO 3166-1 writes it, in two capitals: CA, US, FR. */
final class Country {

    private static final Set<String> CODES = Set.of(Locale.getISOCountries());

    private Country() {}

    static boolean isCode(String said) {
        return CODES.contains(said);
    }
}
