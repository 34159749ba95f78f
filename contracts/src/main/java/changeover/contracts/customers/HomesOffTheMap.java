package changeover.contracts.customers;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.List;
import java.util.UUID;

/** The homes of the current business of which nobody wrote down where they lie, so that the road to them is not reckoned. */
@ApplicationScoped
public class HomesOffTheMap {

    private static final String FROM = """
             from home h
            where h.tenant_id = current_tenant() and (h.latitude is null or h.longitude is null)
              and not exists (select from home_merge m where m.tenant_id = h.tenant_id and m.other_id = h.id
                    and not exists (select from home_merge_undoing u where u.tenant_id = m.tenant_id and u.merge_id = m.id))
            """;

    @Inject
    EntityManager rows;

    /** @param line its address in one line */
    public record Row(UUID id, String line) {}

    public int count() {
        return ((Number) rows.createNativeQuery("select count(*)" + FROM).getSingleResult()).intValue();
    }

    /** By street. */
    @SuppressWarnings("unchecked")
    public List<Row> first(int most) {
        List<Tuple> found = rows.createNativeQuery(
                        "select h.id, concat_ws(', ', h.street, h.unit_label, h.city) as line" + FROM
                                + " order by h.street, h.unit_label, h.id",
                        Tuple.class)
                .setMaxResults(most)
                .getResultList();
        return found.stream()
                .map(row -> new Row(row.get("id", UUID.class), row.get("line", String.class)))
                .toList();
    }
}
