package changeover.billing.invoices;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A draft follows its amended visit, as {@link Following} decides; lines of other visits on it stay. */
final class AmendedDrafts {

    private AmendedDrafts() {}

    static void rewrite(Connection connection, UUID invoice, UUID visit, Draft anew) throws SQLException {
        DraftHead.lock(connection, invoice);
        List<Reckoned> hands = Reckoned.of(connection, invoice, visit).stream()
                .filter(Reckoned::byHand)
                .toList();
        Following following = Following.of(hands, anew.lines());
        try (PreparedStatement gone = connection.prepareStatement(
                        "delete from invoice_line where invoice_id = ? and visit_id = ? and not by_hand");
                PreparedStatement version = connection.prepareStatement(
                        "update invoice set visit_version = ? where id = ? and visit_id = ?")) {
            gone.setObject(1, invoice);
            gone.setObject(2, visit);
            gone.executeUpdate();
            for (Following.Kept kept : following.kept()) {
                keep(connection, kept, anew.visitVersion());
            }
            int after = DraftHead.lastPosition(connection, invoice);
            Rows lines = Drafts.lineRows();
            Drafts.addLines(
                    lines,
                    invoice,
                    Drafts.fromOne(following.fresh().size()).stream()
                            .map(at -> at + after)
                            .toList(),
                    following.fresh());
            lines.insert(connection);
            version.setObject(1, anew.visitVersion());
            version.setObject(2, invoice);
            version.setObject(3, visit);
            version.executeUpdate();
        }
        DraftHead.follow(connection, invoice);
    }

    /** A person's line charges the newest version too, so that what it gives of the plan is still counted. */
    private static void keep(Connection connection, Following.Kept kept, @Nullable Integer version)
            throws SQLException {
        Reckoned line = kept.line();
        if (line.takenOff()) {
            keepOff(connection, kept);
            return;
        }
        try (PreparedStatement update = connection.prepareStatement("""
                update invoice_line set visit_version = ?, reckoned_quantity = ?, reckoned_minor = ?,
                       visit_changed = visit_changed or ?
                 where id = ?""")) {
            update.setObject(1, version);
            update.setObject(2, kept.now().map(DraftLine::quantity).orElse(null));
            update.setObject(3, kept.now().map(one -> one.net().minor()).orElse(null), Types.BIGINT);
            update.setBoolean(4, kept.visitChanged());
            update.setObject(5, line.id());
            update.executeUpdate();
        }
    }

    /** What the visit no longer gives need not be kept off. */
    private static void keepOff(Connection connection, Following.Kept kept) throws SQLException {
        if (kept.now().isEmpty()) {
            try (PreparedStatement gone = connection.prepareStatement("delete from line_taken_off where id = ?")) {
                gone.setObject(1, kept.line().id());
                gone.executeUpdate();
            }
            return;
        }
        DraftLine now = kept.now().get();
        try (PreparedStatement update = connection.prepareStatement("""
                update line_taken_off set reckoned_quantity = ?, reckoned_minor = ?, visit_changed = visit_changed or ?
                 where id = ?""")) {
            update.setBigDecimal(1, now.quantity());
            update.setLong(2, now.net().minor());
            update.setBoolean(3, kept.visitChanged());
            update.setObject(4, kept.line().id());
            update.executeUpdate();
        }
    }
}
