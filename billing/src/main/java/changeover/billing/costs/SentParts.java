package changeover.billing.costs;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Reads what agreements gave without a visit: parts that were left at a home or posted to it, on the day on which they left. */
final class SentParts {

    private static final String SENT = """
            select id, agreement_id, day, part_code, part_kind, quantity
              from part_given where day between ? and ? order by day, id""";

    private SentParts() {}

    /** @param until the last day, in */
    static List<KeptVisit> between(Connection connection, LocalDate from, LocalDate until, Map<UUID, Deal> deals)
            throws SQLException {
        List<KeptVisit> sent = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(SENT)) {
            select.setObject(1, from);
            select.setObject(2, until);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                Deal deal = deals.get(row.getObject(2, UUID.class));
                if (deal != null) {
                    sent.add(KeptVisit.sent(
                            row.getObject(1, UUID.class), deal, row.getObject(3, LocalDate.class), given(row)));
                }
            }
        }
        return sent;
    }

    private static KeptVisit.Given given(ResultSet row) throws SQLException {
        BigDecimal quantity = row.getBigDecimal(6);
        return new KeptVisit.Given(row.getString(4), row.getString(5), quantity);
    }
}
