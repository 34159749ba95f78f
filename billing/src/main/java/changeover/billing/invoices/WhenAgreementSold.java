package changeover.billing.invoices;

import changeover.contracts.agreements.AgreementSold;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** A sold plan becomes its invoice or its instalments, as drafts, in the sale's own transaction. */
@ApplicationScoped
class WhenAgreementSold {

    @Inject
    PlansToAsk plans;

    @Inject
    Drafts drafts;

    void write(@Observes AgreementSold event) {
        drafts.write(plans.of(event.sold()).stream()
                .flatMap(plan -> plan.drafts().stream())
                .toList());
    }
}
