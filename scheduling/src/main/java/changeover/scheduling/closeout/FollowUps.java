package changeover.scheduling.closeout;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What visits left to be done in the current business. */
@ApplicationScoped
public class FollowUps {

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    /** Visits to make and estimates to write, oldest first. A recorded no is nothing to do. */
    public List<FollowUp> open() {
        return rows.createQuery(
                        "from FollowUp where endedOn is null and kind <> 'refused' order by openedOn, id",
                        FollowUp.class)
                .getResultList();
    }

    /** How many ask for an estimate. */
    public int countToEstimate() {
        return rows.createQuery("select count(*) from FollowUp where endedOn is null and kind = 'estimate'", Long.class)
                .getSingleResult()
                .intValue();
    }

    public List<FollowUp> ofHome(UUID homeId) {
        return rows.createQuery("from FollowUp where homeId = :home order by openedOn desc, id", FollowUp.class)
                .setParameter("home", homeId)
                .getResultList();
    }

    public List<FollowUp> ofVisit(UUID visitId) {
        return rows.createQuery("from FollowUp where visitId = :visit order by id", FollowUp.class)
                .setParameter("visit", visitId)
                .getResultList();
    }

    public Optional<FollowUp> find(UUID id) {
        return Optional.ofNullable(rows.find(FollowUp.class, id));
    }

    /** @param became the visit or estimate it became; null when nothing came of it, for a reason */
    public void end(UUID id, String why, @Nullable UUID became) {
        FollowUp followUp = find(id).orElseThrow(
                        () -> Refusal.of("closeout.follow-up-not-found").thrown());
        if (followUp.endedOn().isPresent()) {
            throw Refusal.of("closeout.follow-up-ended").thrown();
        }
        followUp.end(today.day(), Storable.line(why, Body.LONGEST_WORDS), became);
        rows.flush();
    }
}
