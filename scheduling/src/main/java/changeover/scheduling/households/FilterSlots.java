package changeover.scheduling.households;

import changeover.contracts.catalogue.CatalogueJson;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** The filter slots of the current business's homes that are in use. */
@ApplicationScoped
public class FilterSlots {

    private static final String SLOTS = """
            select q.id, q.home_id, q.name, cast(q.fits as text) as fits from equipment q
             where q.tenant_id = current_tenant() and q.kind = 'filter-slot' and q.home_id is not null
               and q.ended_on is null""";

    /** Of each sort those that somebody looked at, the one seen last first. */
    private static final String WATCHED = """
            select r.id, r.home_id, r.name, r.fits from (
              select s.*, row_number() over (partition by s.sort order by s.seen desc, s.id) as place from (
                select q.id, q.home_id, q.name, cast(q.fits as text) as fits,
                  concat(btrim(q.fits ->> 'thickness'), '|', btrim(q.fits ->> 'merv')) as sort, greatest(
                    (select max(l.day) from filter_look l
                      where l.tenant_id = q.tenant_id and l.equipment_id = q.id and l.taken_back_on is null
                        and l.found is not null),
                    (select max(r.day) from reading r
                      where r.tenant_id = q.tenant_id and r.equipment_id = q.id and r.code = 'filter-clean')) as seen
                  from equipment q
                 where q.tenant_id = current_tenant() and q.kind = 'filter-slot' and q.home_id is not null
                   and concat(btrim(q.fits ->> 'thickness'), '|', btrim(q.fits ->> 'merv')) in (:sorts)) s
               where s.seen is not null) r
             where r.place <= :most order by r.sort, r.place
            """;

    @Inject
    EntityManager rows;

    public Optional<FilterSlot> find(UUID id) {
        return read(rows.createNativeQuery(SLOTS + " and q.id = :slot", Tuple.class)
                        .setParameter("slot", id)
                        .getResultList())
                .stream()
                .findFirst();
    }

    public List<FilterSlot> ofHomes(Collection<UUID> homes) {
        return homes.isEmpty()
                ? List.of()
                : read(rows.createNativeQuery(
                                SLOTS + " and q.home_id in :homes order by q.home_id, q.position, q.id", Tuple.class)
                        .setParameter("homes", homes)
                        .getResultList());
    }

    public List<FilterSlot> all() {
        return read(rows.createNativeQuery(SLOTS + " order by q.home_id, q.position, q.id", Tuple.class)
                .getResultList());
    }

    /** Slots of these sorts that were watched, by one statement: of each sort the latest seen first, at most so many. */
    List<FilterSlot> watched(Collection<String> sorts, int most) {
        return sorts.isEmpty()
                ? List.of()
                : read(rows.createNativeQuery(WATCHED, Tuple.class)
                        .setParameter("sorts", sorts)
                        .setParameter("most", most)
                        .getResultList());
    }

    @SuppressWarnings("unchecked")
    private static List<FilterSlot> read(List<?> found) {
        return ((List<Tuple>) found)
                .stream()
                        .map(row -> FilterSlot.of(
                                row.get("id", UUID.class),
                                row.get("home_id", UUID.class),
                                row.get("name", String.class),
                                fits(row.get("fits", String.class))))
                        .toList();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, String> fits(String json) {
        return CatalogueJson.read(json, Map.class);
    }
}
