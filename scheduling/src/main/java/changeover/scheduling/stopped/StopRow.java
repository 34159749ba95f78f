package changeover.scheduling.stopped;

import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A row of the list, read into what it says. */
final class StopRow {

    private StopRow() {}

    /** @param beside what was said of it later, by stop */
    static MachineStop of(Tuple row, StopsBeside.Beside beside) {
        return new MachineStop(
                row.get("id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("equipment_id", UUID.class),
                row.get("machine", String.class),
                row.get("visit_id", UUID.class),
                row.get("finding_id", UUID.class),
                row.get("person", String.class),
                row.get("at", Instant.class),
                row.get("day", LocalDate.class),
                row.get("sentence_code", String.class),
                row.get("seen", String.class),
                row.get("language", String.class),
                row.get("shut_off", String.class),
                beside.corrections().isEmpty()
                        ? row.get("ticket", String.class)
                        : beside.corrections().getLast().ticket(),
                row.get("ticket", String.class),
                row.get("place", String.class),
                heat(row),
                back(row),
                beside.corrections(),
                beside.added(),
                beside.done());
    }

    private static MachineStop.@Nullable Heat heat(Tuple row) {
        Instant at = row.get("heat_at", Instant.class);
        if (at == null) {
            return null;
        }
        return new MachineStop.Heat(
                new HeatAnswer(
                        row.get("only_heat", Boolean.class),
                        row.get("freezing", Boolean.class),
                        row.get("tonight", String.class),
                        called(row, "office"),
                        called(row, "customer")),
                row.get("heat_by", String.class),
                at);
    }

    private static HeatAnswer.@Nullable Called called(Tuple row, String whom) {
        String who = row.get(whom + "_who", String.class);
        return who == null ? null : new HeatAnswer.Called(who, row.get(whom + "_at", Instant.class));
    }

    private static MachineStop.@Nullable Back back(Tuple row) {
        String how = row.get("how", String.class);
        if (how == null) {
            return null;
        }
        return new MachineStop.Back(
                StopEnd.of(how),
                row.get("back_by", String.class),
                row.get("back_partner", String.class),
                row.get("ticket_kind", String.class),
                row.get("ticket_number", String.class),
                row.get("ticket_until", LocalDate.class),
                row.get("back_on", LocalDate.class),
                row.get("done", String.class));
    }
}
