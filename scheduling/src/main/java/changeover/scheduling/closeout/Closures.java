package changeover.scheduling.closeout;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The closures of the current business's visits. */
@ApplicationScoped
public class Closures {

    @Inject
    EntityManager rows;

    public Optional<Closure> of(UUID visitId) {
        return rows.createQuery("from Closure where visitId = :visit", Closure.class)
                .setParameter("visit", visitId)
                .getResultStream()
                .findFirst();
    }

    /** The closures of a home, newest first. */
    public List<Closure> ofHome(UUID homeId) {
        return rows.createQuery("from Closure where homeId = :home order by day desc, closedAt desc", Closure.class)
                .setParameter("home", homeId)
                .getResultList();
    }

    /** How a closed visit was corrected, first to last. */
    public List<Amendment> amendmentsOf(UUID visitId) {
        return rows.createQuery("from Amendment where visitId = :visit order by version", Amendment.class)
                .setParameter("visit", visitId)
                .getResultList();
    }

    /** Who typed a close-out in the technician's name, as from a sheet of paper; empty where they closed it themselves. */
    public Optional<UUID> typedBy(UUID visitId) {
        return rows.createNativeQuery("""
                        select o.person_id from closure c
                          join operation o on o.tenant_id = c.tenant_id and o.visit_id = c.visit_id and o.kind = 'close'
                           and o.state = 'taken' and o.person_id <> c.technician_id
                         where c.visit_id = :visit order by o.place desc""", UUID.class)
                .setParameter("visit", visitId)
                .setMaxResults(1)
                .getResultStream()
                .map(UUID.class::cast)
                .findFirst();
    }

    void keep(Closure closure) {
        rows.persist(closure);
        rows.flush();
    }
}
