package changeover.scheduling.stock;

import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/** Whom the business buys each part from, and how many of it should always lie at a place. */
@ApplicationScoped
public class Supplies {

    @Inject
    EntityManager rows;

    @Inject
    Parts parts;

    /** Nobody again for a blank name. */
    public void boughtFrom(String part, String supplier) {
        known(part);
        String said = supplier.strip();
        if (said.length() > 120) {
            throw Refusal.of("stock.supplier").at("supplier").thrown();
        }
        if (said.isEmpty()) {
            rows.createNativeQuery("delete from part_supplier where part_code = :part")
                    .setParameter("part", part)
                    .executeUpdate();
            return;
        }
        rows.createNativeQuery("""
                        insert into part_supplier (part_code, supplier) values (:part, :supplier)
                        on conflict on constraint one_supplier_a_part do update set supplier = excluded.supplier
                        """)
                .setParameter("part", part)
                .setParameter("supplier", said)
                .executeUpdate();
    }

    /** None again for nought. */
    public void shouldHold(String part, UUID place, BigDecimal quantity) {
        known(part);
        if (quantity.signum() == 0) {
            rows.createNativeQuery("delete from part_minimum where part_code = :part and place_id = :place")
                    .setParameter("part", part)
                    .setParameter("place", place)
                    .executeUpdate();
            return;
        }
        rows.createNativeQuery("""
                        insert into part_minimum (part_code, place_id, quantity) values (:part, :place, :quantity)
                        on conflict on constraint one_minimum_a_part_and_place do update set quantity = excluded.quantity
                        """)
                .setParameter("part", part)
                .setParameter("place", place)
                .setParameter("quantity", quantity)
                .executeUpdate();
    }

    /** By part. */
    public Map<String, String> suppliers() {
        Map<String, String> suppliers = new HashMap<>();
        for (Object[] row : read("select part_code, supplier from part_supplier")) {
            suppliers.put((String) row[0], (String) row[1]);
        }
        return suppliers;
    }

    /** By place, then by part. */
    public Map<UUID, Map<String, BigDecimal>> minimums() {
        Map<UUID, Map<String, BigDecimal>> minimums = new HashMap<>();
        for (Object[] row : read("select place_id, part_code, quantity from part_minimum")) {
            minimums.computeIfAbsent((UUID) row[0], _ -> new TreeMap<>()).put((String) row[1], (BigDecimal) row[2]);
        }
        return minimums;
    }

    private List<Object[]> read(String sql) {
        return rows.createNativeQuery(sql, Object[].class)
                .getResultStream()
                .map(row -> (Object[]) row)
                .toList();
    }

    private void known(String part) {
        if (parts.find(part).isEmpty()) {
            throw Refusal.of("stock.part-not-found").at("part").thrown();
        }
    }
}
