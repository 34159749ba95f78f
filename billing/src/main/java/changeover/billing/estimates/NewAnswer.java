package changeover.billing.estimates;

import changeover.contracts.words.Refusal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a named person said about an estimate, at a time, and how it reached us: a yes within its days and by a way that the law
 * of the home's place leaves open, a no by any way and at any time after the offer.
 */
public record NewAnswer(
        boolean yes,
        String byName,
        Instant at,
        ConsentChannel channel,
        @Nullable String words) {

    /**
     * Why it may not be written down; empty when it may.
     *
     * @param own what the business's owner has set about signing on the spot
     */
    Optional<Refusal> refusal(Estimate estimate, ZoneId zone, Instant now, List<SiteConsent> own) {
        Estimate.Offer offer = estimate.offer();
        if (estimate.answer() != null) {
            return Optional.of(Refusal.of("constraint.an_estimate_is_answered_once"));
        }
        if (offer == null) {
            return Optional.of(Refusal.of("estimate.not-offered"));
        }
        if (byName.isBlank()) {
            return Optional.of(Refusal.of("text.missing").at("byName"));
        }
        LocalDate day = LocalDate.ofInstant(at, zone);
        if (at.isAfter(now)) {
            return Optional.of(Refusal.of("estimate.answer-ahead").at("day"));
        }
        if (day.isBefore(offer.day())) {
            return Optional.of(Refusal.of("estimate.answer-before-offer", Map.of("day", offer.day()))
                    .at("day"));
        }
        if (!yes) {
            return Optional.empty();
        }
        if (day.isAfter(estimate.validUntil())) {
            return Optional.of(Refusal.of("estimate.expired", Map.of("day", estimate.validUntil()))
                    .at("day"));
        }
        return ConsentRules.refusal(
                estimate.place(), channel, day, estimate.origin().askedFor(), own);
    }
}
