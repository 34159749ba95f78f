package changeover.billing.costs;

import changeover.contracts.calendar.Term;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/** Reads accepted agreements, by their numbers: two statements, however many. */
final class DealRows {

    private static final String DEALS = """
            select a.id, a.number, a.plan_id, a.plan_name_en, a.plan_name_fr, a.home_id,
                   concat_ws(', ', h.street, h.unit_label, h.city), a.term_from, a.term_until, a.price_minor, a.visits, e.day
              from agreement a
              join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
              join home h on h.tenant_id = a.tenant_id and h.id = a.home_id
              left join agreement_ending e on e.tenant_id = a.tenant_id and e.agreement_id = a.id
             order by a.number""";

    private static final String CAPS = "select agreement_id, part_kind, quantity from agreement_part";

    private DealRows() {}

    static Map<UUID, Deal> all(Connection connection) throws SQLException {
        Map<UUID, Map<String, BigDecimal>> caps = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(CAPS);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                caps.computeIfAbsent(row.getObject(1, UUID.class), _ -> new HashMap<>())
                        .put(row.getString(2), row.getBigDecimal(3));
            }
        }
        Map<UUID, Deal> deals = new LinkedHashMap<>();
        try (PreparedStatement select = connection.prepareStatement(DEALS);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                UUID id = row.getObject(1, UUID.class);
                deals.put(
                        id,
                        new Deal(
                                id,
                                row.getInt(2),
                                row.getObject(3, UUID.class),
                                new Wording(row.getString(4), row.getString(5)),
                                row.getObject(6, UUID.class),
                                row.getString(7),
                                new Term(row.getObject(8, LocalDate.class), row.getObject(9, LocalDate.class)),
                                row.getLong(10),
                                row.getInt(11),
                                caps.getOrDefault(id, Map.of()),
                                row.getObject(12, LocalDate.class)));
            }
        }
        return deals;
    }
}
