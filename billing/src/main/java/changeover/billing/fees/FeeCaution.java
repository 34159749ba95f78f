package changeover.billing.fees;

import changeover.billing.tax.ShippedRows;
import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * In some places a fee that is fixed in advance may be forbidden: whoever sets one there is warned, with the source. It forbids
 * nothing by itself, since a business may ask fees of other businesses.
 *
 * @param places ISO 3166: a country, or a country's part
 * @param fees the fees it speaks of: {@code returned}, {@code reminder}, or {@link #NO_ACCESS}
 * @param read whether the source's text was read; false means from memory or at second hand
 */
public record FeeCaution(String rule, List<String> places, List<String> fees, Wording source, boolean read) {

    /** The fee of a trip to a closed door, which stands in the price book. */
    public static final String NO_ACCESS = "no-access";

    private static final List<FeeCaution> ROWS =
            ShippedRows.read("/changeover/billing/fee-cautions.json", FeeCaution::row);

    public FeeCaution {
        places = List.copyOf(places);
        fees = List.copyOf(fees);
    }

    /** @param place of the home, {@code CA-QC} */
    public static List<FeeCaution> of(String place, String fee) {
        return ROWS.stream()
                .filter(row -> row.fees.contains(fee))
                .filter(row -> row.places.stream().anyMatch(one -> place.equals(one) || place.startsWith(one + "-")))
                .toList();
    }

    private static FeeCaution row(JsonNode row) {
        return new FeeCaution(
                row.get("rule").asText(),
                row.get("places").valueStream().map(JsonNode::asText).toList(),
                row.get("fees").valueStream().map(JsonNode::asText).toList(),
                new Wording(
                        row.get("source").get("en").asText(),
                        row.get("source").get("fr").asText()),
                row.get("read").asBoolean());
    }
}
