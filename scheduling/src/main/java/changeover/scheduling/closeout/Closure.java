package changeover.scheduling.closeout;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A visit is closed once: by whom, on which day, how long it took, and who received the work. */
@Entity
@Table(name = "closure")
public class Closure extends Owned {

    @Column(name = "visit_id")
    private UUID visitId = new UUID(0, 0);

    @Column(name = "home_id")
    private UUID homeId = new UUID(0, 0);

    @Column(name = "technician_id")
    private UUID technicianId = new UUID(0, 0);

    private LocalDate day = LocalDate.EPOCH;

    @Column(name = "arrived_at")
    private @Nullable Instant arrivedAt;

    @Column(name = "left_at")
    private @Nullable Instant leftAt;

    private int minutes;

    @Column(name = "minutes_planned")
    private int minutesPlanned;

    @Column(name = "extra_minutes")
    private int extraMinutes;

    @Column(name = "extra_why")
    private @Nullable String extraWhy;

    @Column(name = "received_by")
    private @Nullable String receivedBy;

    @Column(name = "nobody_why")
    private @Nullable String nobodyWhy;

    @Column(name = "household_note")
    private @Nullable String householdNote;

    @Column(name = "closed_at")
    private Instant closedAt = Instant.EPOCH;

    private int version;

    static Closure of(VisitAtHand visit, UUID technician, LocalDate day, Instant now) {
        var row = new Closure();
        row.visitId = visit.id();
        row.homeId = visit.homeId();
        row.technicianId = technician;
        row.day = day;
        row.minutesPlanned = visit.minutes();
        row.closedAt = now;
        row.version = 0;
        return row;
    }

    /** Takes over what the sheet says; each time is a version. */
    void follow(Sheet sheet) {
        version++;
        arrivedAt = sheet.of("arrive").map(Taken::at).orElse(null);
        leftAt = sheet.of("leave").map(Taken::at).orElse(null);
        minutes = sheet.minutes().orElse(0);
        extraMinutes = sheet.extraMinutes();
        extraWhy = sheet.one(Operation.MinutesTold.class)
                .map(Operation.MinutesTold::extraWhy)
                .orElse(null);
        receivedBy =
                sheet.one(Operation.Received.class).map(Operation.Received::by).orElse(null);
        nobodyWhy = sheet.one(Operation.Received.class)
                .map(Operation.Received::nobodyWhy)
                .orElse(null);
        householdNote = sheet.one(Operation.HouseholdNote.class)
                .map(Operation.HouseholdNote::text)
                .orElse(null);
    }

    public UUID visitId() {
        return visitId;
    }

    public UUID homeId() {
        return homeId;
    }

    public UUID technicianId() {
        return technicianId;
    }

    public LocalDate day() {
        return day;
    }

    public Optional<Instant> arrivedAt() {
        return Optional.ofNullable(arrivedAt);
    }

    public Optional<Instant> leftAt() {
        return Optional.ofNullable(leftAt);
    }

    public int minutes() {
        return minutes;
    }

    public int minutesPlanned() {
        return minutesPlanned;
    }

    public int extraMinutes() {
        return extraMinutes;
    }

    public Optional<String> extraWhy() {
        return Optional.ofNullable(extraWhy);
    }

    public Optional<String> receivedBy() {
        return Optional.ofNullable(receivedBy);
    }

    public Optional<String> nobodyWhy() {
        return Optional.ofNullable(nobodyWhy);
    }

    public Optional<String> householdNote() {
        return Optional.ofNullable(householdNote);
    }

    public Instant closedAt() {
        return closedAt;
    }

    /** 1 when closed, one more for each amendment. */
    public int version() {
        return version;
    }
}
