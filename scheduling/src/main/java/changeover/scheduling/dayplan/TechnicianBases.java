package changeover.scheduling.dayplan;

import changeover.contracts.words.FilledOn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** Where the technicians of the current business begin their days; whoever has written none begins at the shop. */
@ApplicationScoped
public class TechnicianBases {

    /** Minutes, where nobody has said otherwise. */
    public static final int USUAL_LUNCH = 30;

    @Inject
    EntityManager rows;

    /** Where everybody begins who has said so, by person. */
    public Map<UUID, TechnicianBase.Facts> all() {
        return rows.createQuery("from TechnicianBase", TechnicianBase.class)
                .getResultStream()
                .collect(Collectors.toMap(TechnicianBase::personId, TechnicianBase::facts));
    }

    public Optional<TechnicianBase> of(UUID personId) {
        return rows.createQuery("from TechnicianBase where personId = :person", TechnicianBase.class)
                .setParameter("person", personId)
                .getResultStream()
                .findFirst();
    }

    /** Writes where somebody begins; over what stood there before, if it is still what the writer saw. */
    public TechnicianBase write(UUID personId, TechnicianBase.Facts facts, FilledOn seen) {
        TechnicianBase base = of(personId)
                .map(before -> {
                    seen.mustBe(before.version());
                    before.rewrite(facts);
                    return before;
                })
                .orElseGet(() -> {
                    TechnicianBase first = TechnicianBase.of(personId, facts);
                    rows.persist(first);
                    return first;
                });
        rows.flush();
        return base;
    }
}
