package changeover.scheduling.closeout;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Homes;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Appointment;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.partners.GivenVisit;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.VisitEnding;
import changeover.scheduling.visits.VisitTask;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Takes a visit in hand: its tasks as promised, the home's machines, whose day it stands in. */
@ApplicationScoped
public class VisitsAtHand {

    /** In the order in which a year is laid anew: what is closed here moves the work of the agreement's other visits. */
    private static final String WITH_ITS_YEAR = """
            select v.id from visit v
             where v.id = :id
                or v.kind = 'plan' and v.agreement_id = (select this.agreement_id from visit this where this.id = :id)
             order by v.agreement_id, v.window_from, v.window_until, v.id for update of v
            """;

    @Inject
    EntityManager rows;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    Homes homes;

    @Inject
    AllEquipment equipment;

    @Inject
    OwnCatalogue own;

    @Inject
    GivenVisits given;

    /**
     * Holds the visit, and the others of its agreement, until the end of the transaction: what is said about it is taken one
     * by one, and two that close visits of one year wait for each other.
     *
     * @throws changeover.contracts.words.Refused when this business has no such visit
     */
    @SuppressWarnings("unchecked")
    VisitAtHand lock(UUID visitId) {
        List<UUID> held = rows.createNativeQuery(WITH_ITS_YEAR, UUID.class)
                .setParameter("id", visitId)
                .getResultList();
        if (!held.contains(visitId)) {
            throw notFound();
        }
        return of(visitId);
    }

    /** @throws changeover.contracts.words.Refused when this business has no such visit */
    public VisitAtHand of(UUID visitId) {
        Visit visit = visits.find(visitId).orElseThrow(VisitsAtHand::notFound);
        return of(visit);
    }

    private VisitAtHand of(Visit visit) {
        List<VisitTask> tasks = visits.tasksOf(visit.id());
        Map<UUID, TaskAtHand> checklist = new LinkedHashMap<>();
        tasks.stream()
                .filter(task -> task.who().equals("technician"))
                .map(this::task)
                .forEach(task -> checklist.put(task.id(), task));
        Optional<Appointment> appointment = appointments.of(visit.id());
        return new VisitAtHand(
                visit.id(),
                visit.homeId(),
                visit.agreementId().orElse(null),
                visit.kind().code(),
                visit.answersId().orElse(null),
                visit.minutes(),
                appointment.map(Appointment::technicianId).orElse(null),
                appointment
                        .map(Appointment::day)
                        .or(() -> given.of(visit.id()).map(GivenVisit::day))
                        .orElse(null),
                visits.ending(visit.id()).map(VisitEnding::how).orElse(null),
                checklist,
                machines(visit.homeId(), tasks));
    }

    private TaskAtHand task(VisitTask task) {
        Optional<Task> described = task.body()
                .map(body -> CatalogueJson.read(body, Task.class))
                .or(() -> Catalogue.shipped().findTask(task.taskCode()))
                .or(() -> own.catalogue().findTask(task.taskCode()));
        return new TaskAtHand(
                task.id(),
                task.equipmentId().orElse(null),
                task.taskCode(),
                task.wording(),
                task.reason(),
                task.basis(),
                task.act(),
                task.ticket().orElse(null),
                task.minutes(),
                described.map(Task::readings).orElse(List.of()),
                described.map(Task::parts).orElse(List.of()),
                described.map(Task::caution).orElse(null));
    }

    /** The home's own machines, those common to its building, and any that a task names although it was taken out. */
    private Map<UUID, MachineAtHand> machines(UUID homeId, List<VisitTask> tasks) {
        List<Equipment> found = new ArrayList<>(equipment.ofHome(homeId));
        homes.get(homeId)
                .flatMap(home -> home.buildingId())
                .ifPresent(building -> found.addAll(equipment.ofBuilding(building)));
        found.addAll(equipment.all(tasks.stream()
                .flatMap((VisitTask task) -> task.equipmentId().stream())
                .toList()));
        Map<UUID, MachineAtHand> machines = new LinkedHashMap<>();
        for (Equipment machine : found) {
            machines.put(
                    machine.id(),
                    new MachineAtHand(
                            machine.id(), machine.kind(), machine.name(), machine.fits(), machine.nameplate()));
        }
        return machines;
    }

    static changeover.contracts.words.Refused notFound() {
        return Refusal.of("closeout.visit-not-found").thrown();
    }
}
