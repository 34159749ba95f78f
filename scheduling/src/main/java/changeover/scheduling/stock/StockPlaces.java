package changeover.scheduling.stock;

import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The shelf and the vans of the current business; a technician's van is there when it is first asked for. */
@ApplicationScoped
public class StockPlaces {

    /** A van carries its person's name; of two with one name the second carries a mark of its own too. */
    private static final String MAKE = """
            insert into stock_place (kind, name, person_id)
            select 'van', m.name || case when exists (select 1 from stock_place taken where taken.name = m.name)
                or exists (select 1 from membership other where other.name = m.name and other.id < m.id)
              then ' ' || left(m.person_id::text, 8) else '' end, m.person_id
              from membership m
             where not exists (select 1 from stock_place there where there.person_id = m.person_id) and\s
            """;

    @Inject
    EntityManager rows;

    public StockPlace add(StockPlace place) {
        rows.persist(place);
        rows.flush();
        return place;
    }

    public Optional<StockPlace> find(UUID id) {
        return Optional.ofNullable(rows.find(StockPlace.class, id));
    }

    /** The shelves and the vans in use; a technician without a van gets one now. */
    public List<StockPlace> all() {
        make("m.role = 'technician' and m.until_day is null and (m.asked_on is null or m.joined_on is not null)", null);
        return inUse();
    }

    /** The shop's first shelf. */
    public Optional<StockPlace> shelf() {
        return inUse().stream().filter(StockPlace::isShelf).findFirst();
    }

    /** Gives a shelf or a van another name; empty when there is none of that id here. */
    public Optional<StockPlace> rename(UUID id, String name) {
        String said = name.strip();
        if (said.isEmpty() || said.length() > 80 || said.chars().anyMatch(Character::isISOControl)) {
            throw Refusal.of("stock.name").at("name").thrown();
        }
        Optional<StockPlace> found = find(id);
        found.ifPresent(place -> place.rename(said));
        rows.flush();
        return found;
    }

    public Optional<StockPlace> vanOf(UUID person) {
        return rows.createQuery("from StockPlace where personId = :person", StockPlace.class)
                .setParameter("person", person)
                .getResultStream()
                .findFirst();
    }

    /** The person's van, made now if it is the first time somebody asks; empty for a stranger to the business. */
    public Optional<StockPlace> van(UUID person) {
        return vanOf(person).or(() -> make("m.person_id = :person", person) == 0 ? Optional.empty() : vanOf(person));
    }

    /**
     * Where the parts of a visit come from when nobody says so: the van of the technician whose visit it is; without one
     * the van of whoever writes; for somebody without a van the shelf.
     *
     * @param technician whose visit it is; null when it has nobody yet
     */
    public Optional<StockPlace> usual(@Nullable UUID technician, UUID by) {
        if (technician != null) {
            return van(technician);
        }
        make("m.role = 'technician' and m.person_id = :person", by);
        return vanOf(by).or(this::shelf);
    }

    private List<StockPlace> inUse() {
        return rows.createQuery("from StockPlace where closedOn is null order by kind, name, id", StockPlace.class)
                .getResultList();
    }

    private int make(String whose, @Nullable UUID person) {
        Query insert = rows.createNativeQuery(MAKE + whose + " on conflict do nothing");
        if (person != null) {
            insert.setParameter("person", person);
        }
        return insert.executeUpdate();
    }
}
