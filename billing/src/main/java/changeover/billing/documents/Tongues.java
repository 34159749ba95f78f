package changeover.billing.documents;

import changeover.contracts.tenants.Place;
import java.util.List;
import java.util.Locale;

/**
 * In Quebec invoices, receipts and the like are in French; another language may stand behind it (Charter of the French language,
 * CQLR c. C-11, s. 57).
 */
final class Tongues {

    private Tongues() {}

    /**
     * The languages of a paper, the first is the one that counts.
     *
     * @param region of the business that writes, as ISO 3166-2 has it or the part after the hyphen
     */
    static List<Locale> of(String country, String region, Locale reader) {
        boolean frenchFirst =
                Place.isQuebec(country, region) && !reader.getLanguage().equals(Locale.FRENCH.getLanguage());
        return frenchFirst ? List.of(Locale.CANADA_FRENCH, reader) : List.of(reader);
    }
}
