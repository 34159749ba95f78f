package changeover.scheduling.dayplan;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A day that one person, or the whole business, does not work. */
@Entity
@Table(name = "day_off")
public class DayOff extends Owned {

    @Column(name = "person_id", updatable = false)
    private @Nullable UUID personId;

    @Column(updatable = false)
    private LocalDate day = LocalDate.EPOCH;

    private String why = "";

    static DayOff of(@Nullable UUID personId, LocalDate day, String why) {
        var off = new DayOff();
        off.personId = personId;
        off.day = day;
        off.why = why;
        return off;
    }

    /** Empty when the whole business is closed. */
    public Optional<UUID> personId() {
        return Optional.ofNullable(personId);
    }

    public LocalDate day() {
        return day;
    }

    public String why() {
        return why;
    }
}
