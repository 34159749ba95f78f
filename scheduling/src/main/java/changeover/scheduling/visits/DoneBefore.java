package changeover.scheduling.visits;

import changeover.contracts.tenants.ManyRows;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What was told at the take-over to have been done goes into the machines' history, without a visit of ours. */
final class DoneBefore {

    private final ManyRows history =
            ManyRows.into("unit_history", "home_id uuid, equipment_id uuid, task_code text, day date");

    void add(PlannedYear year, RestOfYear rest, @Nullable LocalDate day) {
        if (day != null) {
            rest.done()
                    .forEach(task ->
                            history.add(year.of().homeId(), year.unit(task.equipmentId()), task.taskCode(), day));
        }
    }

    void store(Connection connection) throws SQLException {
        history.store(connection);
    }
}
