package changeover.contracts.merging;

import changeover.contracts.merging.Likeness.Dwelling;
import changeover.contracts.merging.Likeness.Pair;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The homes of the business that look like one; what was merged, or said to be two, is not offered again. */
@ApplicationScoped
public class AlikeHomes {

    private static final String DWELLINGS = """
            select h.id, h.street, h.unit_label, h.city, h.postal,
                   string_agg(distinct c.name, E'\\n'), string_agg(distinct c.phone, E'\\n')
              from home h
              left join home_part p on p.tenant_id = h.tenant_id and p.home_id = h.id and p.until_day is null
              left join customer c on c.tenant_id = p.tenant_id and c.id = p.customer_id
             where h.tenant_id = current_tenant() and not exists (
                     select from home_merge m
                      where m.tenant_id = h.tenant_id and m.other_id = h.id and not exists (
                        select from home_merge_undoing u where u.tenant_id = m.tenant_id and u.merge_id = m.id))
             group by h.id, h.street, h.unit_label, h.city, h.postal
            """;

    private static final String APART = "select home_id, other_id from homes_apart";

    @Inject
    EntityManager rows;

    /** Two that look like one, with what is known of each. */
    public record Alike(Dwelling one, Dwelling other, Set<Likeness.Common> common) {}

    public List<Alike> all() {
        List<Dwelling> homes = new ArrayList<>();
        Map<UUID, Dwelling> byId = new HashMap<>();
        for (Tuple row : ask(DWELLINGS)) {
            var home = new Dwelling(
                    row.get(0, UUID.class),
                    row.get(1, String.class),
                    row.get(2, String.class),
                    row.get(3, String.class),
                    row.get(4, String.class),
                    lines(row.get(5, String.class)),
                    lines(row.get(6, String.class)));
            homes.add(home);
            byId.put(home.id(), home);
        }
        Set<List<UUID>> apart = new HashSet<>();
        ask(APART).forEach(row -> apart.add(List.of(row.get(0, UUID.class), row.get(1, UUID.class))));
        return Likeness.among(homes).stream()
                .filter(pair -> !apart.contains(List.of(pair.one(), pair.other())))
                .map((Pair pair) -> new Alike(
                        Objects.requireNonNull(byId.get(pair.one())),
                        Objects.requireNonNull(byId.get(pair.other())),
                        pair.common()))
                .toList();
    }

    private static Set<String> lines(@Nullable String said) {
        return said == null ? Set.of() : Set.copyOf(Arrays.asList(said.split("\n")));
    }

    @SuppressWarnings("unchecked")
    private List<Tuple> ask(String sql) {
        return rows.createNativeQuery(sql, Tuple.class).getResultList();
    }
}
