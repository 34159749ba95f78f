package changeover.scheduling.dayplan;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.util.UUID;

/** A person works from an hour to an hour on a weekday. */
@Entity
@Table(name = "roster_hours")
class RosterHours extends Owned {

    @Column(name = "person_id", updatable = false)
    private UUID personId = new UUID(0, 0);

    @Column(updatable = false)
    private int weekday = 1;

    private LocalTime starts = LocalTime.MIDNIGHT;
    private LocalTime ends = LocalTime.MIDNIGHT;

    static RosterHours of(UUID personId, Roster.Hours hours) {
        var row = new RosterHours();
        row.personId = personId;
        row.weekday = hours.weekday().getValue();
        row.starts = hours.starts();
        row.ends = hours.ends();
        return row;
    }

    UUID personId() {
        return personId;
    }

    Roster.Hours hours() {
        return new Roster.Hours(DayOfWeek.of(weekday), starts, ends);
    }

    int minutes() {
        return Math.toIntExact(Duration.between(starts, ends).toMinutes());
    }
}
