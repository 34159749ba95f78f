package changeover.scheduling.dayplan.change;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/** Whose telephone rings on a day, outside the hours that they work: who goes when somebody is without heat. */
@ApplicationScoped
class OnCallThen {

    @Inject
    EntityManager rows;

    Optional<UUID> on(LocalDate day) {
        return rows.createNativeQuery(
                        "select person_id from on_call where from_day <= :day and until_day > :day", UUID.class)
                .setParameter("day", day)
                .getResultStream()
                .map(UUID.class::cast)
                .findFirst();
    }
}
