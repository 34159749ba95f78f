package changeover.scheduling.dayplan;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.UUID;

/** A visit has a day, an hour and a technician; the technician can be in one place only. */
@Entity
@Table(name = "appointment")
public class Appointment extends Owned {

    @Column(name = "visit_id", updatable = false)
    private UUID visitId = new UUID(0, 0);

    @Column(name = "technician_id")
    private UUID technicianId = new UUID(0, 0);

    private LocalDate day = LocalDate.EPOCH;
    private LocalTime starts = LocalTime.MIDNIGHT;
    private LocalTime ends = LocalTime.MIDNIGHT;

    @Version
    private int version;

    static Appointment give(UUID visitId, UUID technicianId, LocalDate day, LocalTime starts, LocalTime ends) {
        var appointment = new Appointment();
        appointment.visitId = visitId;
        appointment.move(technicianId, day, starts, ends);
        return appointment;
    }

    void move(UUID newTechnicianId, LocalDate newDay, LocalTime newStarts, LocalTime newEnds) {
        technicianId = newTechnicianId;
        day = newDay;
        starts = newStarts;
        ends = newEnds;
    }

    boolean isAt(UUID otherTechnicianId, LocalDate otherDay, LocalTime otherStarts) {
        return technicianId.equals(otherTechnicianId) && day.equals(otherDay) && starts.equals(otherStarts);
    }

    public UUID visitId() {
        return visitId;
    }

    /** The technician's person id. */
    public UUID technicianId() {
        return technicianId;
    }

    public LocalDate day() {
        return day;
    }

    public LocalTime starts() {
        return starts;
    }

    public LocalTime ends() {
        return ends;
    }

    public int version() {
        return version;
    }
}
