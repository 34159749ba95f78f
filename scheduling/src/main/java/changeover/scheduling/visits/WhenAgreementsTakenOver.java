package changeover.scheduling.visits;

import changeover.contracts.agreements.AgreementsTakenOver;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** Of a year that began elsewhere only the rest is planned. */
@ApplicationScoped
class WhenAgreementsTakenOver {

    @Inject
    Years years;

    @Inject
    FirstReadings readings;

    void planRest(@Observes AgreementsTakenOver event) {
        years.planRest(event);
        readings.putOn(event.agreements().stream()
                .map(AgreementsTakenOver.TakenOver::homeId)
                .toList());
    }
}
