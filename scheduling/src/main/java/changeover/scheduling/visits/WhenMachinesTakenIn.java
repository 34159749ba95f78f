package changeover.scheduling.visits;

import changeover.contracts.agreements.MachinesTakenIn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** A year that was planned without these machines is laid out again from the day on which they came. */
@ApplicationScoped
class WhenMachinesTakenIn {

    @Inject
    Years years;

    void planAgain(@Observes MachinesTakenIn event) {
        years.planAgain(event.agreements());
    }
}
