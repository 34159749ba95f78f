package changeover.scheduling.dayplan.change;

import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.HourMoves;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** Hours that customers were told: a told hour is confirmed while the visit has it, and no plan moves it. */
@ApplicationScoped
public class HoursTold {

    private static final String NOT_YET = """
             and not exists (select 1 from hour_standing t where t.tenant_id = a.tenant_id and t.visit_id = a.visit_id
               and t.day = a.day and t.starts = a.starts)
            """;

    private static final String THESE = """
            insert into hour_told (visit_id, day, starts, at)
            select a.visit_id, a.day, a.starts, :at from appointment a
             where a.tenant_id = current_tenant() and a.visit_id in (:visits)
            """ + NOT_YET;

    private static final String ALL_OF_A_DAY = """
            insert into hour_told (visit_id, day, starts, at)
            select a.visit_id, a.day, a.starts, :at from appointment a
             where a.tenant_id = current_tenant() and a.day = :day and not exists (
               select 1 from visit_ending e where e.tenant_id = a.tenant_id and e.visit_id = a.visit_id)
            """ + NOT_YET;

    @Inject
    EntityManager rows;

    @Inject
    Appointments appointments;

    @Inject
    HourMoves moves;

    @Inject
    Clock clock;

    /** The customer was told the hour that the visit has; a second time changes nothing, unless it moved in between. */
    public void tell(UUID visitId) {
        if (appointments.of(visitId).isEmpty()) {
            throw Refusal.of("appointment.second-needs-a-day").thrown();
        }
        tellThese(List.of(visitId));
    }

    /** The customers of these visits were told the hours that they have. */
    void tellThese(Collection<UUID> visits) {
        if (!visits.isEmpty()) {
            rows.flush();
            rows.createNativeQuery(THESE)
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
