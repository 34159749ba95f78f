package changeover.scheduling.dayplan.change;

import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Appointment;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.HourMoves;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.UUID;

/** Hours that customers were told: a told hour is confirmed while the visit has it, and no plan moves it. */
@ApplicationScoped
public class HoursTold {

    private static final String ALL_OF_A_DAY = """
            insert into hour_told (visit_id, day, starts, at)
            select a.visit_id, a.day, a.starts, :at from appointment a
             where a.tenant_id = current_tenant() and a.day = :day and not exists (
               select 1 from visit_ending e where e.tenant_id = a.tenant_id and e.visit_id = a.visit_id)
            on conflict on constraint an_hour_is_told_once do nothing
            """;

    @Inject
    EntityManager rows;

    @Inject
    Appointments appointments;

    @Inject
    HourMoves moves;

    @Inject
    Clock clock;

    /** The customer was told the hour that the visit has; a second time changes nothing. */
    public void tell(UUID visitId) {
        Appointment given = appointments
                .of(visitId)
                .orElseThrow(() -> Refusal.of("appointment.second-needs-a-day").thrown());
        rows.createNativeQuery("insert into hour_told (visit_id, day, starts, at) values (:visit, :day, :starts, :at)"
                        + " on conflict on constraint an_hour_is_told_once do nothing")
                .setParameter("visit", visitId)
                .setParameter("day", given.day())
                .setParameter("starts", given.starts())
                .setParameter("at", clock.instant())
                .executeUpdate();
    }

    /** The customers of these visits were told the hours that they have. */
    void tellThese(Collection<UUID> visits) {
        if (!visits.isEmpty()) {
            rows.createNativeQuery("insert into hour_told (visit_id, day, starts, at)"
                            + " select a.visit_id, a.day, a.starts, :at from appointment a"
                            + " where a.tenant_id = current_tenant() and a.visit_id in (:visits)"
                            + " on conflict on constraint an_hour_is_told_once do nothing")
                    .setParameter("visits", visits)
                    .setParameter("at", clock.instant())
                    .executeUpdate();
        }
    }

    /**
     * Every customer of a day was told their hour, but for those whose visit has ended.
     *
     * @return how many were not told before
     */
    public int tellAll(LocalDate day) {
        int told = rows.createNativeQuery(ALL_OF_A_DAY)
                .setParameter("day", day)
                .setParameter("at", clock.instant())
                .executeUpdate();
        if (told == 0) {
            throw Refusal.of("appointment.nobody-to-tell").thrown();
        }
        return told;
    }

    /** Whether the customer was told the hour that the visit has. */
    public boolean isTold(UUID visitId) {
        return moves.isTold(visitId);
    }
}
