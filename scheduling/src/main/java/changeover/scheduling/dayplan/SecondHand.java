package changeover.scheduling.dayplan;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.UUID;

/** Somebody goes with the technician whose visit it is, at the same hours; where the day is moved they come along. */
@Entity
@Table(name = "appointment_second")
public class SecondHand extends Owned {

    @Column(name = "visit_id", updatable = false)
    private UUID visitId = new UUID(0, 0);

    @Column(name = "technician_id")
    private UUID technicianId = new UUID(0, 0);

    private LocalDate day = LocalDate.EPOCH;
    private LocalTime starts = LocalTime.MIDNIGHT;
    private LocalTime ends = LocalTime.MIDNIGHT;

    static SecondHand with(Appointment appointment, UUID technicianId) {
        var second = new SecondHand();
        second.visitId = appointment.visitId();
        second.technicianId = technicianId;
        second.day = appointment.day();
        second.starts = appointment.starts();
        second.ends = appointment.ends();
        return second;
    }

    void become(UUID other) {
        technicianId = other;
    }

    public UUID visitId() {
        return visitId;
    }

    /** The person's id. */
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
}
