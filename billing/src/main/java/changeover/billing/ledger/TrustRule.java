package changeover.billing.ledger;

import changeover.billing.tax.ShippedRows;
import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * In some places money that is paid for work due long after the sale is kept in trust until the work is done; a place without a
 * row asks nothing.
 *
 * @param places ISO 3166: a country, or a country's part
 * @param from the first day on which the rule holds
 * @param months work due later than so many months after the sale
 * @param read whether the source's text was read; false means from memory or at second hand
 */
public record TrustRule(String rule, List<String> places, LocalDate from, int months, Wording source, boolean read) {

    private static final List<TrustRule> ROWS = ShippedRows.read("/changeover/billing/trusts.json", TrustRule::row);

    /**
     * @param place of the home, {@code CA-QC}
     * @param firstDue the day of the first visit, or the first day on which it may be
     */
    public static Optional<TrustRule> of(String place, LocalDate sold, LocalDate firstDue) {
        return ROWS.stream().filter(row -> row.holds(place, sold, firstDue)).findFirst();
    }

    private boolean holds(String place, LocalDate sold, LocalDate firstDue) {
        return places.stream().anyMatch(one -> place.equals(one) || place.startsWith(one + "-"))
                && !sold.isBefore(from)
                && firstDue.isAfter(sold.plusMonths(months));
    }

    private static TrustRule row(JsonNode row) {
        return new TrustRule(
                row.get("rule").asText(),
                row.get("places").valueStream().map(JsonNode::asText).toList(),
                LocalDate.parse(row.get("from").asText()),
                row.get("months").asInt(),
                new Wording(
                        row.get("source").get("en").asText(),
                        row.get("source").get("fr").asText()),
                row.get("read").asBoolean());
    }
}
