package changeover.scheduling.visits;

import changeover.contracts.agreements.AgreementSold;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** What was sold is planned at once: the year's visits are there with the yes. */
@ApplicationScoped
class WhenAgreementSold {

    @Inject
    Years years;

    @Inject
    FirstReadings readings;

    void plan(@Observes AgreementSold event) {
        years.plan(event.sold().stream().map(AgreementSold.Sold::agreementId).toList());
        readings.putOn(event.sold().stream().map(AgreementSold.Sold::homeId).toList());
    }
}
