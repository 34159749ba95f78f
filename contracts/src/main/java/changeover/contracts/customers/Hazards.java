package changeover.contracts.customers;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** The hazards of the current business's homes. */
@ApplicationScoped
public class Hazards {

    @Inject
    EntityManager rows;

    public Hazard add(Hazard hazard) {
        rows.persist(hazard);
        rows.flush();
        return hazard;
    }

    /** The danger is gone; false when there is none of that id here. */
    public boolean clear(UUID id, LocalDate day) {
        Hazard found = rows.find(Hazard.class, id);
        if (found == null) {
            return false;
        }
        found.clear(day);
        rows.flush();
        return true;
    }

    /** What can still hurt whoever comes in. */
    public List<Hazard> of(UUID homeId) {
        return rows.createQuery(
                        "from Hazard where homeId = :home and clearedOn is null order by seenOn, id", Hazard.class)
                .setParameter("home", homeId)
                .getResultList();
    }
}
