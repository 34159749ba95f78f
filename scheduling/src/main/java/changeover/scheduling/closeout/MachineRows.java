package changeover.scheduling.closeout;

import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Homes;
import changeover.scheduling.closeout.Operation.MachineFound;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.UUID;

/** The machines that were found stand in the home as soon as they are said; with the closing the home counts as read. */
@ApplicationScoped
class MachineRows {

    private static final String SPOKEN_OF = """
            select exists (select from visit_task where tenant_id = current_tenant() and equipment_id = :id)
                or exists (select from finding where tenant_id = current_tenant() and equipment_id = :id)
                or exists (select from part_used where tenant_id = current_tenant() and equipment_id = :id)
                or exists (select from return_visit where tenant_id = current_tenant() and equipment_id = :id)
                or exists (select from part_claim where tenant_id = current_tenant() and equipment_id = :id)
                or exists (select from part_order where tenant_id = current_tenant() and equipment_id = :id)
                or exists (select from machine_stop where tenant_id = current_tenant() and equipment_id = :id)
                or exists (select from reading where tenant_id = current_tenant() and equipment_id = :id)
            """;

    @Inject
    AllEquipment equipment;

    @Inject
    Homes homes;

    @Inject
    EntityManager rows;

    void follow(VisitAtHand visit, Sheet before, Sheet now, LocalDate day) {
        before.each(MachineFound.class, (taken, _) -> taken.id()).stream()
                .filter(machine -> now.of(machine).isEmpty())
                .forEach(machine -> takeBack(machine, day));
        now.each(
                MachineFound.class,
                (taken, found) -> before.of(taken.id()).isPresent()
                        ? taken
                        : equipment.addToHome(taken.id(), visit.homeId(), found.facts()));
    }

    /** It was never there; where somebody has written of it since, it is taken out instead. */
    private void takeBack(UUID machine, LocalDate day) {
        boolean spokenOf = (boolean) rows.createNativeQuery(SPOKEN_OF, Boolean.class)
                .setParameter("id", machine)
                .getSingleResult();
        equipment.takeBack(machine, spokenOf, day);
    }

    /** The sheet is closed: what stood to be read was read, when a machine was written down and still stands. */
    void close(VisitAtHand visit, Sheet sheet, LocalDate day) {
        if (!MachineRules.onSheet(sheet).isEmpty()
                && !equipment.ofHome(visit.homeId()).isEmpty()) {
            homes.equipmentRead(visit.homeId(), day);
        }
    }
}
