package changeover.billing.notices;

import changeover.billing.estimates.AskedMore;
import changeover.billing.estimates.AskingForMore;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.Estimates;
import changeover.billing.estimates.MoreAsked;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Locales;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

/** Whoever pays is asked for a yes to more, with the amount and what for; a question that is over stays here. */
@ApplicationScoped
class WhenMoreAsked implements StillTrue {

    @Inject
    Estimates estimates;

    @Inject
    AskingForMore asking;

    @Inject
    Recipients recipients;

    @Inject
    Outbox outbox;

    @Inject
    Businesses businesses;

    void write(@Observes MoreAsked event) {
        Estimate estimate = estimates.find(event.estimateId()).orElseThrow();
        AskedMore asked = asking.find(event.askedId()).orElseThrow();
        Recipient payer = recipients.of(List.of(estimate.customerId())).get(estimate.customerId());
        if (payer != null) {
            outbox.write(List.of(message(estimate, asked, payer.in(estimate.language()))));
        }
    }

    private NewMessage message(Estimate estimate, AskedMore asked, Recipient payer) {
        Locale locale = Locales.of(estimate.language());
        Money accepted = Objects.requireNonNull(estimate.accepted());
        LetterText text = LetterText.of(
                estimate.language(),
                kind(),
                payer.name(),
                businesses.current().name(),
                businesses.profile().facts().phone(),
                Map.of(
                        "label", estimate.label().orElseThrow(),
                        "home", estimate.home(),
                        "words", asked.words(),
                        "accepted", accepted.format(locale),
                        "whole", asked.whole().format(locale)));
        return new NewMessage(kind(), asked.id(), 1, estimate.homeId(), payer, text.subject(), text.body(), List.of());
    }

    @Override
    public String kind() {
        return AnsweredOnThePage.MORE;
    }

    @Override
    public boolean holds(UUID aboutId) {
        return asking.find(aboutId)
                .flatMap(asked -> estimates.find(asked.estimateId()))
                .flatMap(asking::open)
                .filter(open -> open.id().equals(aboutId))
                .isPresent();
    }

    @Override
    public void withdrawn(UUID aboutId) {}
}
