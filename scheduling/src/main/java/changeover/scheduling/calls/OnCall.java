package changeover.scheduling.calls;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.UUID;

/** One person's telephone rings outside hours, from a day until another. */
@Entity
@Table(name = "on_call")
public class OnCall extends Owned {

    @Column(name = "person_id", updatable = false)
    private UUID personId = new UUID(0, 0);

    @Column(name = "from_day", updatable = false)
    private LocalDate fromDay = LocalDate.EPOCH;

    @Column(name = "until_day", updatable = false)
    private LocalDate untilDay = LocalDate.EPOCH;

    static OnCall of(UUID personId, Window days) {
        var turn = new OnCall();
        turn.personId = personId;
        turn.fromDay = days.from();
        turn.untilDay = days.until();
        return turn;
    }

    public UUID personId() {
        return personId;
    }

    public Window days() {
        return new Window(fromDay, untilDay);
    }
}
