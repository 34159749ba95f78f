package changeover.scheduling.visits;

import changeover.contracts.agreements.AgreementEnded;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** An ended agreement promises nothing more: its open visits are cancelled, and what the household had yet to do falls away. */
@ApplicationScoped
class WhenAgreementEnded {

    @Inject
    Visits visits;

    void letFall(@Observes AgreementEnded event) {
        visits.letFall(event.agreementId(), event.day(), event.why());
    }
}
