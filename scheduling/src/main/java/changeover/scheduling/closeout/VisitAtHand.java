package changeover.scheduling.closeout;

import changeover.scheduling.visits.VisitEnd;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The visit that is being closed out, with everything its sheet is judged by.
 *
 * @param minutes planned on site
 * @param technician whose day it stands in; null without an appointment
 * @param day of the appointment, or on which a partner goes; null without one
 * @param ended how it ended; null while it is open
 */
public record VisitAtHand(
        UUID id,
        UUID homeId,
        @Nullable UUID agreementId,
        String kind,
        @Nullable UUID answersId,
        int minutes,
        @Nullable UUID technician,
        @Nullable LocalDate day,
        @Nullable VisitEnd ended,
        Map<UUID, TaskAtHand> tasks,
        Map<UUID, MachineAtHand> machines) {

    /** The same visit as the one technician's who closed it. */
    VisitAtHand closedBy(UUID person) {
        return new VisitAtHand(id, homeId, agreementId, kind, answersId, minutes, person, day, ended, tasks, machines);
    }

    /** The same visit without the machines that its own sheet has written down. */
    VisitAtHand apartFrom(Sheet sheet) {
        Map<UUID, MachineAtHand> others = new LinkedHashMap<>(machines);
        sheet.each(Operation.MachineFound.class, (taken, _) -> taken.id()).forEach(others::remove);
        return new VisitAtHand(
                id, homeId, agreementId, kind, answersId, minutes, technician, day, ended, tasks, others);
    }

    Optional<TaskAtHand> task(UUID task) {
        return Optional.ofNullable(tasks.get(task));
    }

    @Nullable
    String machineName(@Nullable UUID machine) {
        MachineAtHand found = machine == null ? null : machines.get(machine);
        return found == null ? null : found.name();
    }

    Map<String, String> nameplate(@Nullable UUID machine) {
        MachineAtHand found = machine == null ? null : machines.get(machine);
        return found == null ? Map.of() : found.nameplate();
    }
}
