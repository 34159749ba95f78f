package changeover.web.office;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What was changed in a home and in what stands in it: who, when, what it said before. Secrets never show. */
@ApplicationScoped
public class ChangesOfHomes {

    /** As many as a page holds; the newest. */
    private static final int MOST = 200;

    private static final Set<String> OUR_OWN = Set.of(
            "version",
            "tenant_id",
            "id",
            "home_id",
            "building_id",
            "made_by",
            "made_at",
            "batch",
            "position",
            "secret",
            "customer_id",
            "owner_customer_id",
            "follows_id",
            "search");

    private static final String CHANGES = """
            select a.table_name, a.act, a.at, m.name as person, k.key as field,
              a.before ->> k.key as before, a.after ->> k.key as after,
              coalesce(q.name, a.before ->> 'name', a.before ->> 'label') as thing
            from audit a
            left join membership m on m.tenant_id = a.tenant_id and m.person_id = a.person_id
            left join equipment q on q.tenant_id = a.tenant_id and q.id = a.row_id
            cross join lateral jsonb_object_keys(
              case when a.act = 'delete' then '{"": null}'::jsonb else a.after end) k (key)
            where a.tenant_id = current_tenant()
              and (a.row_id = :home
                or a.row_id in (select id from equipment where home_id = :home)
                or a.row_id in (select id from home_part where home_id = :home)
                or a.row_id in (select id from hazard where home_id = :home)
                or (a.act = 'delete' and a.before ->> 'home_id' = cast(:home as text)))
            order by a.at desc, a.id, k.key
            limit :most
            """;

    @Inject
    EntityManager rows;

    /**
     * @param table which kind of thing was changed
     * @param thing its name, or empty
     * @param removed whether it was taken away whole
     * @param field its column, empty when it was taken away
     */
    public record Change(
            String table,
            String thing,
            boolean removed,
            Instant at,
            String person,
            String field,
            String before,
            String after) {}

    List<Change> of(UUID home) {
        var changes = new ArrayList<Change>();
        for (Object one : rows.createNativeQuery(CHANGES, Tuple.class)
                .setParameter("home", home)
                .setParameter("most", MOST)
                .getResultList()) {
            Tuple row = (Tuple) one;
            String field = orEmpty(row.get("field", String.class));
            if (!OUR_OWN.contains(field)) {
                changes.add(new Change(
                        row.get("table_name", String.class),
                        orEmpty(row.get("thing", String.class)),
                        row.get("act", String.class).equals("delete"),
                        row.get("at", Instant.class),
                        orEmpty(row.get("person", String.class)),
                        field,
                        orEmpty(row.get("before", String.class)),
                        orEmpty(row.get("after", String.class))));
            }
        }
        return changes;
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
