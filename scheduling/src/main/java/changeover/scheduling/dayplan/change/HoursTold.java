package changeover.scheduling.dayplan.change;

import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Appointment;
import changeover.scheduling.dayplan.Appointments;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.UUID;

/** Hours that customers were told; a told hour holds while the visit has it, and no plan moves it. */
@ApplicationScoped
public class HoursTold {

    @Inject
    EntityManager rows;

    @Inject
    Appointments appointments;

    /** The customer was told the hour that the visit has; a second time changes nothing. */
    public void tell(UUID visitId) {
        Appointment given = appointments
                .of(visitId)
                .orElseThrow(() -> Refusal.of("appointment.second-needs-a-day").thrown());
        rows.createNativeQuery("insert into hour_told (visit_id, day, starts) values (:visit, :day, :starts)"
                        + " on conflict on constraint an_hour_is_told_once do nothing")
                .setParameter("visit", visitId)
                .setParameter("day", given.day())
                .setParameter("starts", given.starts())
                .executeUpdate();
    }

    /** Whether the customer was told the hour that the visit has. */
    public boolean isTold(UUID visitId) {
        return !rows.createNativeQuery("select 1 from hour_told t join appointment a on a.tenant_id = t.tenant_id"
                        + " and a.visit_id = t.visit_id and a.day = t.day and a.starts = t.starts"
                        + " where t.visit_id = :visit")
                .setParameter("visit", visitId)
                .getResultList()
                .isEmpty();
    }
}
