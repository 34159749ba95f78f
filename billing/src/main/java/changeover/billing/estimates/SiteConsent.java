package changeover.billing.estimates;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What the owner has read about a place: whether a repair under a visit the customer asked for may be signed on the spot, from
 * a day on.
 *
 * @param region ISO 3166-2 of the home
 */
public record SiteConsent(UUID id, String region, LocalDate from, boolean allowed, String source) {

    /** The row that holds at the place on the day. */
    static Optional<SiteConsent> on(List<SiteConsent> rows, String region, LocalDate day) {
        return rows.stream()
                .filter(row -> row.region.equals(region) && !row.from.isAfter(day))
                .max(Comparator.comparing(SiteConsent::from));
    }
}
