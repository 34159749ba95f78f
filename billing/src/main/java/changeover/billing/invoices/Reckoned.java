package changeover.billing.invoices;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What the product reckoned itself for a line of a visit, whatever a person made of the line afterwards.
 *
 * @param id of the line, or of its being taken off
 * @param quantity null when the visit no longer gives this line, and a person's stands alone; so is {@code minor}
 */
record Reckoned(
        UUID id,
        boolean takenOff,
        boolean byHand,
        String kind,
        @Nullable String item,
        String coverage,
        @Nullable BigDecimal quantity,
        @Nullable Long minor) {

    /** In the order of the document; what was taken off comes last. */
    static List<Reckoned> of(Connection connection, UUID invoice, UUID visit) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select id, false, by_hand, kind, item_code, coverage,
                       case when by_hand then reckoned_quantity else quantity end,
                       case when by_hand then reckoned_minor else net_minor end, position
                  from invoice_line where invoice_id = ? and visit_id = ?
                union all
                select id, true, true, kind, item_code, coverage, reckoned_quantity, reckoned_minor, 0
                  from line_taken_off where invoice_id = ? and visit_id = ?
                 order by 2, 9, 1""")) {
            select.setObject(1, invoice);
            select.setObject(2, visit);
            select.setObject(3, invoice);
            select.setObject(4, visit);
            List<Reckoned> all = new ArrayList<>();
            ResultSet row = select.executeQuery();
            while (row.next()) {
                all.add(new Reckoned(
                        row.getObject(1, UUID.class),
                        row.getBoolean(2),
                        row.getBoolean(3),
                        row.getString(4),
                        row.getString(5),
                        row.getString(6),
                        row.getBigDecimal(7),
                        row.getObject(8, Long.class)));
            }
            return all;
        }
    }

    /** The same thing on the same terms: another quantity or price of it is still the same line. */
    boolean isOf(DraftLine line) {
        return kind.equals(line.kind())
                && Objects.equals(item, line.itemCode())
                && coverage.equals(line.covered().code());
    }

    boolean saysTheSame(DraftLine line) {
        return quantity != null
                && minor != null
                && isOf(line)
                && quantity.compareTo(line.quantity()) == 0
                && minor == line.net().minor();
    }

    /** Whether the visit now gives what it gave before, in whichever order. */
    static boolean sayTheSame(List<Reckoned> before, List<DraftLine> now) {
        List<Reckoned> left = new ArrayList<>(before);
        left.removeIf(one -> one.minor() == null);
        for (DraftLine line : now) {
            Reckoned same = left.stream()
                    .filter(one -> one.saysTheSame(line))
                    .findFirst()
                    .orElse(null);
            if (same == null) {
                return false;
            }
            left.remove(same);
        }
        return left.isEmpty();
    }
}
