package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A home's year: what was promised for each machine and when, the visits that keep it with their reasons, what the
 * household does itself, and what no visit keeps.
 */
public record YearOfHome(
        UUID homeId,
        Window year,
        List<Promised> promises,
        List<Going> visits,
        List<OwnTask> household,
        List<NotKept> unkept) {

    public YearOfHome {
        promises = List.copyOf(promises);
        visits = List.copyOf(visits);
        household = List.copyOf(household);
        unkept = List.copyOf(unkept);
    }

    /** How a visit stands on a day. */
    public enum Standing {
        /** Its window has not opened and it has no day. */
        TO_COME,
        /** It may be made now and has no day. */
        WITHOUT_DAY,
        HAS_A_DAY,
        /** Its last day is over and nobody closed it. */
        LATE,
        CLOSED,
        CANCELLED,
        NO_ACCESS,
        NOT_KEPT
    }

    /** One time that one task is promised for one machine, and the visit that keeps it. */
    public record Promised(
            @Nullable UUID equipmentId,
            @Nullable String machine,
            String taskCode,
            Wording task,
            Window window,
            UUID visitId,
            Standing standing) {}

    /**
     * A visit with its checklist.
     *
     * @param day the day it was closed or ended, else the day it has; null while it has none
     * @param starts the hour it has; null while it has none
     * @param technician who has it; null while nobody has
     * @param technicianId the technician's person id
     */
    public record Going(
            UUID visitId,
            @Nullable UUID agreementId,
            VisitKind kind,
            Window window,
            int minutes,
            Standing standing,
            @Nullable LocalDate day,
            @Nullable LocalTime starts,
            @Nullable String technician,
            @Nullable UUID technicianId,
            @Nullable String why,
            @Nullable String note,
            List<Line> tasks) {

        public Going {
            tasks = List.copyOf(tasks);
        }
    }

    /** A line of a visit's checklist with the reason it is due. */
    public record Line(
            UUID visitTaskId,
            @Nullable UUID equipmentId,
            @Nullable String machine,
            String taskCode,
            Wording task,
            Wording reason,
            String basis,
            Window due,
            String act,
            @Nullable String ticket,
            int minutes) {}

    /** What the household does itself, by a day. */
    public record OwnTask(
            UUID id,
            @Nullable UUID equipmentId,
            @Nullable String machine,
            String taskCode,
            Wording task,
            String act,
            LocalDate dueOn,
            @Nullable LocalDate doneOn,
            @Nullable String doneBy) {}

    /** A promise that no visit keeps, and why. */
    public record NotKept(
            @Nullable UUID equipmentId,
            @Nullable String machine,
            String taskCode,
            Wording task,
            Window window,
            Wording why) {}
}
