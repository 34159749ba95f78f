package changeover.billing.estimates;

import changeover.billing.tax.ShippedRows;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where the law of a place keeps a yes from being signed on the spot, it comes by the customer's own link or by a call with the
 * office, unless the owner has set, with a source, that a repair under a visit the customer asked for may be signed there.
 *
 * @param place of the home, ISO 3166-2
 * @param from first day, in
 * @param until the day it no longer stands; null while it stands
 * @param read whether the source's text was read; false means from memory or at second hand
 */
public record ConsentRules(
        String place,
        List<ConsentChannel> refused,
        LocalDate from,
        @Nullable LocalDate until,
        Wording why,
        String source,
        boolean read) {

    private static final List<ConsentRules> ROWS =
            ShippedRows.read("/changeover/billing/consents.json", ConsentRules::row);

    public ConsentRules {
        refused = List.copyOf(refused);
    }

    /**
     * Why a yes may not be taken that way; empty where it may.
     *
     * @param askedFor whether the customer asked for the visit in which it is said
     * @param own what the business's owner has set, with a source each
     */
    public static Optional<Refusal> refusal(
            String place, ConsentChannel channel, LocalDate day, boolean askedFor, List<SiteConsent> own) {
        Optional<SiteConsent> set = SiteConsent.on(own, place, day);
        if (channel == ConsentChannel.SITE
                && askedFor
                && set.filter(SiteConsent::allowed).isPresent()) {
            return Optional.empty();
        }
        if (channel == ConsentChannel.SITE && set.filter(row -> !row.allowed()).isPresent()) {
            return Optional.of(Refusal.of(
                            "estimate.site-not-here", Map.of("source", set.get().source()))
                    .at("channel"));
        }
        return of(place, day).stream()
                .filter(row -> row.refused.contains(channel))
                .findFirst()
                .map(row -> Refusal.of("estimate.channel-refused", Map.of("why", row.why, "source", row.source))
                        .at("channel"));
    }

    /** The rows of a place that stand on the day. */
    public static List<ConsentRules> of(String place, LocalDate day) {
        return ROWS.stream()
                .filter(row -> row.place.equals(place) && !day.isBefore(row.from))
                .filter(row -> row.until == null || day.isBefore(row.until))
                .toList();
    }

    private static ConsentRules row(JsonNode row) {
        JsonNode until = row.get("until");
        return new ConsentRules(
                row.get("place").asText(),
                row.get("refused")
                        .valueStream()
                        .map(JsonNode::asText)
                        .map(ConsentChannel::of)
                        .toList(),
                LocalDate.parse(row.get("from").asText()),
                until == null ? null : LocalDate.parse(until.asText()),
                new Wording(row.get("en").asText(), row.get("fr").asText()),
                row.get("source").asText(),
                row.get("read").asBoolean());
    }
}
