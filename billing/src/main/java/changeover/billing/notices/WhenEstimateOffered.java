package changeover.billing.notices;

import changeover.billing.documents.DayInPaper;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateOffered;
import changeover.billing.estimates.EstimateState;
import changeover.billing.estimates.Estimates;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Locales;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

/** Every offered estimate goes to whoever pays, with its paper; one that we took back meanwhile stays here. */
@ApplicationScoped
class WhenEstimateOffered implements StillTrue {

    private static final String KIND = AnsweredOnThePage.ESTIMATE;

    @Inject
    Estimates estimates;

    @Inject
    Recipients recipients;

    @Inject
    Outbox outbox;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    void write(@Observes EstimateOffered offered) {
        Estimate estimate = estimates.find(offered.estimateId()).orElseThrow();
        Recipient payer = recipients.of(List.of(estimate.customerId())).get(estimate.customerId());
        if (payer != null) {
            outbox.write(List.of(message(estimate, payer.in(estimate.language()))));
        }
    }

    private NewMessage message(Estimate estimate, Recipient payer) {
        Locale locale = Locales.of(estimate.language());
        Estimate.Offer offer = Objects.requireNonNull(estimate.offer());
        LetterText text = LetterText.of(
                estimate.language(),
                KIND,
                payer.name(),
                businesses.current().name(),
                businesses.profile().facts().phone(),
                Map.of(
                        "label", offer.label(),
                        "home", estimate.home(),
                        "words", estimate.words(),
                        "total", offer.total().format(locale),
                        "valid", DayInPaper.of(estimate.validUntil(), locale)));
        return new NewMessage(
                KIND,
                estimate.id(),
                1,
                estimate.homeId(),
                payer,
                text.subject(),
                text.body(),
                List.of(Wanted.of(PaperKind.ESTIMATE, estimate.id())));
    }

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public boolean holds(UUID aboutId) {
        return estimates
                .find(aboutId)
                .map(estimate -> estimate.state(today.day()))
                .filter(state -> state != EstimateState.WITHDRAWN)
                .isPresent();
    }

    @Override
    public void withdrawn(UUID aboutId) {}
}
