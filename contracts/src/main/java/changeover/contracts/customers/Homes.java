package changeover.contracts.customers;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.time.LocalDate;
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

    @Inject
    AllEquipment equipment;

    @Inject
    Today today;

    @Inject
    Event<EquipmentRead> read;

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
        Optional<Home> found = locked(id);
        found.ifPresent(home -> {
            boolean unread = home.toBeRead();
            home.rewrite(facts, form);
            rows.flush();
            if (unread && !home.toBeRead()) {
                read.fire(new EquipmentRead(List.of(id), today.day()));
            }
        });
        return found;
    }

    /**
     * The machines of a home that was to be read are all entered; said again it changes nothing.
     *
     * @return whether it was still to be read
     * @throws changeover.contracts.words.Refused while no machine stands there
     */
    public boolean equipmentRead(UUID id, LocalDate day) {
        Home home = locked(id)
                .orElseThrow(() -> Refusal.of("agreement.home-unknown").thrown());
        if (!home.toBeRead()) {
            return false;
        }
        if (equipment.ofHome(id).isEmpty()) {
            throw Refusal.of("home.nothing-read").thrown();
        }
        home.equipmentRead();
        rows.flush();
        read.fire(new EquipmentRead(List.of(id), day));
        return true;
    }

    private Optional<Home> locked(UUID id) {
        Optional<Home> found = Optional.ofNullable(rows.find(Home.class, id));
        found.ifPresent(home -> rows.refresh(home, LockModeType.PESSIMISTIC_WRITE));
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

    /** Where the homes are, each place once: {@code CA-QC}. */
    public List<String> regions() {
        return rows.createQuery("select distinct country, region from Home order by country, region", Object[].class)
                .getResultStream()
                .map(row -> row[0] + "-" + row[1])
                .toList();
    }

    /** How many; one that was merged into another is not counted. */
    public long count() {
        return ((Number) rows.createNativeQuery("""
                        select count(*) from home h
                         where h.tenant_id = current_tenant()
                           and not exists (select from home_merge m where m.tenant_id = h.tenant_id and m.other_id = h.id
                             and not exists (select from home_merge_undoing u
                               where u.tenant_id = m.tenant_id and u.merge_id = m.id))""").getSingleResult()).longValue();
    }
}
