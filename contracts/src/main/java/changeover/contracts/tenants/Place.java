package changeover.contracts.tenants;

import changeover.contracts.words.Refusal;
import java.time.ZoneId;
import java.util.Currency;
import java.util.Locale;
import java.util.Map;

/** Where a business works: its country and region (ISO 3166-2), and with them its zone and its money. */
public record Place(String country, String region, ZoneId zone, Currency currency) {

    /** Zones of the tz database by province; where a province has several, the one of most of its people. */
    private static final Map<String, String> CANADA = Map.ofEntries(
            Map.entry("QC", "America/Toronto"),
            Map.entry("ON", "America/Toronto"),
            Map.entry("NB", "America/Moncton"),
            Map.entry("NS", "America/Halifax"),
            Map.entry("PE", "America/Halifax"),
            Map.entry("NL", "America/St_Johns"),
            Map.entry("MB", "America/Winnipeg"),
            Map.entry("SK", "America/Regina"),
            Map.entry("AB", "America/Edmonton"),
            Map.entry("BC", "America/Vancouver"),
            Map.entry("YT", "America/Whitehorse"),
            Map.entry("NT", "America/Yellowknife"),
            Map.entry("NU", "America/Iqaluit"));

    private static final Map<String, String> ELSEWHERE =
            Map.of("US-NY", "America/New_York", "US-TX", "America/Chicago", "US-CA", "America/Los_Angeles");

    /**
     * Reads {@code CA-QC}.
     *
     * @throws changeover.contracts.words.Refused when no zone is known for it: then the zone must be said
     */
    public static Place of(String code) {
        String[] parts = code.toUpperCase(Locale.ROOT).split("-", 2);
        String zone = parts.length == 2 && parts[0].equals("CA") ? CANADA.get(parts[1]) : ELSEWHERE.get(code);
        if (zone == null) {
            throw Refusal.of("business.place-unknown", Map.of("place", code))
                    .at("region")
                    .thrown();
        }
        return of(code, ZoneId.of(zone));
    }

    /** @param region after the hyphen or whole: {@code QC}, {@code CA-QC} */
    public static boolean isQuebec(String country, String region) {
        return country.equals("CA") && (region.equals("QC") || region.equals("CA-QC"));
    }

    /** @param code country and region as ISO 3166-2 joins them, {@code CA-QC} */
    public static Place of(String code, ZoneId zone) {
        String[] parts = code.toUpperCase(Locale.ROOT).split("-", 2);
        Currency currency = Currency.getInstance(Locale.of("", parts[0]));
        return new Place(parts[0], parts.length == 2 ? parts[1] : "", zone, currency);
    }
}
