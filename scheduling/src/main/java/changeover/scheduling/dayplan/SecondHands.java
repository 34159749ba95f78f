package changeover.scheduling.dayplan;

import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Who goes along to the visits that two make; the database refuses somebody in two places. */
@ApplicationScoped
public class SecondHands {

    @Inject
    EntityManager rows;

    @Inject
    Appointments appointments;

    @Inject
    People people;

    public Optional<SecondHand> of(UUID visitId) {
        return rows.createQuery("from SecondHand where visitId = :visit", SecondHand.class)
                .setParameter("visit", visitId)
                .getResultStream()
                .findFirst();
    }

    /** @param technicianId the person's id; null when nobody goes along any more */
    public void give(UUID visitId, @Nullable UUID technicianId) {
        Appointment appointment = appointments
                .of(visitId)
                .orElseThrow(() -> Refusal.of("appointment.second-needs-a-day").thrown());
        Optional<SecondHand> before = of(visitId);
        if (technicianId == null) {
            before.ifPresent(rows::remove);
            rows.flush();
            return;
        }
        if (people.of(technicianId)
                .filter(member -> member.worksOn(appointment.day()))
                .isEmpty()) {
            throw Refusal.of("appointment.nobody").at("second").thrown();
        }
        if (technicianId.equals(appointment.technicianId())) {
            throw Refusal.of("appointment.second-is-the-first").at("second").thrown();
        }
        before.ifPresentOrElse(
                second -> second.become(technicianId), () -> rows.persist(SecondHand.with(appointment, technicianId)));
        rows.flush();
    }
}
