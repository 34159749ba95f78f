package changeover.scheduling.visits;

import changeover.contracts.customers.EquipmentEnded;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** What was promised for a machine goes with it. */
@ApplicationScoped
class WhenEquipmentEnded {

    @Inject
    MachinesTakenOut years;

    void letFall(@Observes EquipmentEnded event) {
        years.letFall(event.equipmentId(), event.day());
    }
}
