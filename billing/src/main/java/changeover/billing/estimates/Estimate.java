package changeover.billing.estimates;

import changeover.contracts.money.Money;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a repair will cost, said before it is made; its yes is the most that the work may be charged before taxes.
 *
 * @param home its address in a line
 * @param place of the home, ISO 3166-2: its law decides how a yes may be said
 * @param language of the paper, the customer's
 * @param origin what it was written from
 * @param validUntil its last day, in
 * @param deposit asked before the work; null for none
 * @param offer null while it is a draft
 * @param answer null while there is none
 * @param accepted the amount before taxes that the customer said yes to, with every later yes; null before the first
 * @param visits in which the accepted work is done, the oldest first
 */
public record Estimate(
        UUID id,
        int version,
        UUID homeId,
        String home,
        String place,
        UUID customerId,
        String customer,
        String language,
        Origin origin,
        String words,
        int minutes,
        boolean trip,
        LocalDate validUntil,
        @Nullable Money deposit,
        Currency currency,
        LocalDate writtenOn,
        @Nullable Offer offer,
        @Nullable Answer answer,
        @Nullable Money accepted,
        List<UUID> visits) {

    private static final int SOON = 7;

    /** @param askedFor whether the customer asked for the visit in which it was found, or rang */
    public record Origin(
            @Nullable UUID callId,
            @Nullable UUID visitId,
            @Nullable UUID followUpId,
            boolean askedFor) {}

    /** As it was offered, and so it stands. */
    public record Offer(String label, LocalDate day, Money subtotal, Money tax, Money total) {}

    /**
     * @param how accepted, refused or withdrawn
     * @param channel null where we took it back
     */
    public record Answer(
            String how,
            String byName,
            Instant at,
            @Nullable ConsentChannel channel,
            @Nullable String words) {}

    public EstimateState state(LocalDate today) {
        return EstimateState.of(offer != null, answer == null ? null : answer.how(), validUntil, today);
    }

    /** Whether it waits for an answer and has a week or less for it. */
    public boolean expiresSoon(LocalDate today) {
        return state(today) == EstimateState.OFFERED && !today.plusDays(SOON).isBefore(validUntil);
    }

    /** What the customer's yes comes to with taxes; a later yes is taxed in the same measure as the offer. */
    Money acceptedWithTaxes() {
        if (offer == null) {
            return Money.zero(currency);
        }
        if (accepted == null || accepted.equals(offer.subtotal())) {
            return offer.total();
        }
        return offer.subtotal().isPositive()
                ? accepted.plus(
                        offer.tax().fraction(accepted.minor(), offer.subtotal().minor()))
                : accepted;
    }

    public Optional<String> label() {
        return Optional.ofNullable(offer).map(Offer::label);
    }
}
