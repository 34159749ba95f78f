package changeover.billing.pricing;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where a trip has a fee of its own, from a day on: homes whose postal code begins so, or homes so near the shop.
 *
 * @param postals beginnings of postal codes, capitals without blanks
 * @param withinKm as the crow flies; null for a zone of postal codes alone
 * @param closed from that day on the zone is no more
 */
public record TravelZone(
        String code,
        Wording name,
        List<String> postals,
        @Nullable Integer withinKm,
        LocalDate from,
        boolean closed) {

    public TravelZone {
        postals = List.copyOf(postals);
    }

    /** Capitals without blanks and hyphens: {@code j4k 1a2} is {@code J4K1A2}. */
    public static String bare(String postal) {
        return postal.toUpperCase(java.util.Locale.ROOT).replaceAll("[\\s\u00a0-]", "");
    }
}
