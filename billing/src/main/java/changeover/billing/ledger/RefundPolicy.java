package changeover.billing.ledger;

import changeover.billing.tax.ShippedRows;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The law of the place says how a cancelled plan is paid back; where a row names two ways, the customer gets the one that
 * gives back more. A place without a row follows the agreement's own terms, day by day.
 *
 * @param places ISO 3166: a country, or a country's part
 * @param why the row holds for this reason only; null for any
 * @param withinDays the row holds only so many days after the yes; null for always
 * @param read whether the source's text was read; false means from memory or at second hand
 */
public record RefundPolicy(
        String rule,
        List<String> places,
        @Nullable String why,
        @Nullable Integer withinDays,
        List<RefundWay> ways,
        String source,
        boolean read) {

    private static final List<RefundPolicy> ROWS =
            ShippedRows.read("/changeover/billing/refunds.json", RefundPolicy::row);

    private static final RefundPolicy OWN_TERMS = new RefundPolicy(
            "own-terms",
            List.of(),
            null,
            null,
            List.of(RefundWay.PRO_RATA),
            "no rule of the place is on file: the agreement’s own terms, day by day",
            true);

    /**
     * @param place of the home, {@code CA-QC}
     * @param why the reason's code, {@code moved}; empty when none is given
     * @param daysSinceYes days between the customer's yes and the cancelling
     */
    public static RefundPolicy of(String place, String why, long daysSinceYes) {
        return ROWS.stream()
                .filter(row -> row.holds(place, why, daysSinceYes))
                .findFirst()
                .orElse(OWN_TERMS);
    }

    private boolean holds(String place, String reason, long daysSinceYes) {
        return places.stream().anyMatch(one -> place.equals(one) || place.startsWith(one + "-"))
                && (why == null || why.equals(reason))
                && (withinDays == null || daysSinceYes >= 0 && daysSinceYes <= withinDays);
    }

    private static RefundPolicy row(JsonNode row) {
        return new RefundPolicy(
                row.get("rule").asText(),
                row.get("places").valueStream().map(JsonNode::asText).toList(),
                row.hasNonNull("why") ? row.get("why").asText() : null,
                row.hasNonNull("withinDays") ? row.get("withinDays").asInt() : null,
                row.get("ways")
                        .valueStream()
                        .map(way -> RefundWay.of(way.asText()))
                        .toList(),
                row.get("source").asText(),
                row.get("read").asBoolean());
    }
}
