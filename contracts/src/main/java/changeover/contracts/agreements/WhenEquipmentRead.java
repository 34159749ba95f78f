package changeover.contracts.agreements;

import changeover.contracts.customers.EquipmentRead;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** What was sold unseen is promised as soon as the machines are known. */
@ApplicationScoped
class WhenEquipmentRead {

    @Inject
    MachinesInAgreements machines;

    void takeIn(@Observes EquipmentRead event) {
        machines.takeIn(event.homes(), event.day());
    }
}
