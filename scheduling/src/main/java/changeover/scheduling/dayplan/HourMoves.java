package changeover.scheduling.dayplan;

import changeover.contracts.tenants.ManyRows;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The hours that visits had and have no more, each with who changed it, when, and why where somebody said so. */
@ApplicationScoped
public class HourMoves {

    /**
     * One visit's hour, as it was and as it becomes.
     *
     * @param technician null, with the day and the hour, where it has none any more
     * @param told whether the customer was told the hour that it had
     */
    public record Moved(
            UUID visit,
            UUID wasTechnician,
            LocalDate wasDay,
            LocalTime wasStarts,
            @Nullable UUID technician,
            @Nullable LocalDate day,
            @Nullable LocalTime starts,
            boolean told) {

        boolean isAnotherHour() {
            return !wasDay.equals(day) || !wasStarts.equals(starts);
        }
    }

    @Inject
    EntityManager rows;

    @Inject
    AgroalDataSource database;

    @Inject
    Clock clock;

    /** Whether the customer was told the hour that the visit has, and it never moved since. */
    public boolean isTold(UUID visitId) {
        return !rows.createNativeQuery("select 1 from hour_standing t join appointment a on a.tenant_id = t.tenant_id"
                        + " and a.visit_id = t.visit_id and a.day = t.day and a.starts = t.starts"
                        + " where t.visit_id = :visit")
                .setParameter("visit", visitId)
                .getResultList()
                .isEmpty();
    }

    /**
     * Written before anything moves.
     *
     * @throws changeover.contracts.words.Refused where a told hour would move without a reason
     */
    public void write(List<Moved> moved, @Nullable Moving moving) {
        var written = ManyRows.into(
                "appointment_move",
                "visit_id uuid, was_technician_id uuid, was_day date, was_starts time, technician_id uuid, day date,"
                        + " starts time, told boolean, asked_by text, why text, at timestamptz");
        for (Moved one : moved) {
            Moving.refusal(one.told(), one.isAnotherHour(), moving).ifPresent(refusal -> {
                throw refusal.thrown();
            });
            written.add(
                    one.visit(),
                    one.wasTechnician(),
                    one.wasDay(),
                    one.wasStarts(),
                    one.technician(),
                    one.day(),
                    one.starts(),
                    one.told(),
                    moving == null ? null : moving.by().code(),
                    moving == null ? null : moving.why(),
                    clock.instant());
        }
        try (Connection connection = database.getConnection()) {
            written.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("what moved could not be written", cause);
        }
    }
}
