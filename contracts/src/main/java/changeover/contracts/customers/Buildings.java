package changeover.contracts.customers;

import changeover.contracts.words.FilledOn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The buildings of the current business. */
@ApplicationScoped
public class Buildings {

    @Inject
    EntityManager rows;

    public Building add(Building.Facts facts) {
        Building building = Building.write(facts);
        rows.persist(building);
        rows.flush();
        return building;
    }

    /** Writes a building's facts anew; empty when there is none of that id here. */
    public Optional<Building> rewrite(UUID id, Building.Facts facts, FilledOn form) {
        Optional<Building> found = Optional.ofNullable(rows.find(Building.class, id, LockModeType.PESSIMISTIC_WRITE));
        found.ifPresent(building -> {
            building.rewrite(facts, form);
            rows.flush();
        });
        return found;
    }

    public Optional<Building> get(UUID id) {
        return Optional.ofNullable(rows.find(Building.class, id));
    }

    public List<Building> all() {
        return rows.createQuery("from Building order by name", Building.class).getResultList();
    }
}
