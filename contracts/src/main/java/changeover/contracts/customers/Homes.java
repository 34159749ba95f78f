package changeover.contracts.customers;

import changeover.contracts.words.FilledOn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The homes of the current business. */
@ApplicationScoped
public class Homes {

    @Inject
    EntityManager rows;

    @Inject
    Keys keys;

    @Inject
    HomeSearch search;

    /** A new home, whose key in the homes file is its street and unit, numbered when they are taken. */
    public Home add(Home.Facts facts) {
        return store(Home.write(keys.freeFor("home", HomeLine.of(facts.street(), facts.unitLabel(), "")), facts));
    }

    /** A new home under a key of the file's own. */
    public Home add(String key, Home.Facts facts) {
        return store(Home.write(key, facts));
    }

    private Home store(Home home) {
        rows.persist(home);
        rows.flush();
        return home;
    }

    /** Writes a home's facts anew; empty when there is none of that id here. */
    public Optional<Home> rewrite(UUID id, Home.Facts facts, FilledOn form) {
        Optional<Home> found = Optional.ofNullable(rows.find(Home.class, id, LockModeType.PESSIMISTIC_WRITE));
        found.ifPresent(home -> {
            home.rewrite(facts, form);
            rows.flush();
        });
        return found;
    }

    public Optional<Home> get(UUID id) {
        return Optional.ofNullable(rows.find(Home.class, id));
    }

    public Optional<Home> ofKey(String key) {
        return rows.createQuery("from Home where key = :key", Home.class)
                .setParameter("key", key)
                .getResultStream()
                .findFirst();
    }

    public List<Home> all(Collection<UUID> ids) {
        return rows.createQuery("from Home where id in :ids order by street, unitLabel, id", Home.class)
                .setParameter("ids", ids)
                .getResultList();
    }

    public List<Home> ofBuilding(UUID buildingId) {
        return rows.createQuery("from Home where buildingId = :building order by unitLabel, id", Home.class)
                .setParameter("building", buildingId)
                .getResultList();
    }

    /** Homes in which every word of the text stands somewhere: key, address, people, telephone or serial. */
    public List<FoundHome> find(String text, int limit) {
        return search.find(text, 0, limit);
    }

    /** A page of the homes found, as {@link #find}; every home for a blank text. */
    public List<FoundHome> find(String text, int from, int limit) {
        return search.find(text, from, limit);
    }

    public long count() {
        return rows.createQuery("select count(h) from Home h", Long.class).getSingleResult();
    }
}
