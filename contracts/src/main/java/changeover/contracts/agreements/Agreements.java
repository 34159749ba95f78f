package changeover.contracts.agreements;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The agreements of the current business. */
@ApplicationScoped
public class Agreements {

    @Inject
    EntityManager rows;

    @Inject
    Event<AgreementSold> sold;

    @Inject
    Event<AgreementEnded> ended;

    public Optional<Agreement> find(UUID id) {
        return Optional.ofNullable(rows.find(Agreement.class, id));
    }

    public Optional<Acceptance> acceptance(UUID agreementId) {
        return rows.createQuery("from Acceptance where agreementId = :agreement", Acceptance.class)
                .setParameter("agreement", agreementId)
                .getResultStream()
                .findFirst();
    }

    public Optional<Ending> ending(UUID agreementId) {
        return rows.createQuery("from Ending where agreementId = :agreement", Ending.class)
                .setParameter("agreement", agreementId)
                .getResultStream()
                .findFirst();
    }

    /** Those of a home, the newest first. */
    public List<Agreement> of(UUID homeId) {
        return rows.createQuery(
                        "from Agreement where homeId = :home order by termFrom desc, number desc", Agreement.class)
                .setParameter("home", homeId)
                .getResultList();
    }
}
