package changeover.scheduling.stock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The shelf and the vans of the current business; a technician's van is there when it is first asked for. */
@ApplicationScoped
public class StockPlaces {

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

    public List<StockPlace> all() {
        return rows.createQuery("from StockPlace where closedOn is null order by kind, name", StockPlace.class)
                .getResultList();
    }

    /** The shop's first shelf. */
    public Optional<StockPlace> shelf() {
        return all().stream().filter(StockPlace::isShelf).findFirst();
    }

    public Optional<StockPlace> vanOf(UUID person) {
        return rows.createQuery("from StockPlace where personId = :person", StockPlace.class)
                .setParameter("person", person)
                .getResultStream()
                .findFirst();
    }

    /** The technician's van, made now if it is the first time somebody asks; empty for a stranger to the business. */
    public Optional<StockPlace> van(UUID person) {
        return vanOf(person).or(() -> {
            int made =
                    rows.createNativeQuery("""
                            insert into stock_place (kind, name, person_id)
                            select 'van', name || case when exists (
                                select 1 from stock_place taken where taken.name = m.name)
                              then ' ' || left(m.person_id::text, 4) else '' end, person_id
                              from membership m where person_id = :person
                            on conflict do nothing
                            """).setParameter("person", person).executeUpdate();
            return made == 0 ? Optional.empty() : vanOf(person);
        });
    }
}
