package changeover.billing.tax;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What the product's own tables name as their source, in the reader's language; what a person wrote stands as written. */
public final class ShippedSources {

    private record Source(String english, String french) {}

    private static final Map<String, String> FRENCH = read("taxes", "refunds");

    private ShippedSources() {}

    public static String in(Locale reader, String source) {
        return reader.getLanguage().equals("fr") ? FRENCH.getOrDefault(source, source) : source;
    }

    private static Map<String, String> read(String... tables) {
        Map<String, String> french = new HashMap<>();
        for (String table : tables) {
            List<Source> rows = ShippedRows.read(
                    "/changeover/billing/" + table + ".json",
                    row -> new Source(
                            row.get("source").asText(), row.get("sourceFr").asText()));
            rows.forEach(row -> french.put(row.english(), row.french()));
        }
        return Map.copyOf(french);
    }
}
