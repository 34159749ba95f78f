package changeover.billing.estimates;

import changeover.billing.estimates.EstimateFacts.OtherItem;
import changeover.billing.estimates.EstimateFacts.PartItem;
import changeover.billing.invoices.Rows;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** What was asked for in an estimate, in the order in which it was written. */
final class ItemRows {

    private ItemRows() {}

    /** The facts of the estimate, with its items. */
    static EstimateFacts facts(Connection connection, Estimate estimate) throws SQLException {
        List<PartItem> parts = new ArrayList<>();
        List<OtherItem> others = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select kind, item_code, quantity, words, unit, unit_price_minor, work from estimate_item
                 where estimate_id = ? order by position""")) {
            select.setObject(1, estimate.id());
            ResultSet row = select.executeQuery();
            while (row.next()) {
                if (row.getString(1).equals("part")) {
                    parts.add(new PartItem(row.getString(2), row.getBigDecimal(3)));
                } else {
                    others.add(new OtherItem(
                            row.getString(4),
                            row.getBigDecimal(3),
                            row.getString(5),
                            new Money(row.getLong(6), estimate.currency()),
                            Work.of(row.getString(7))));
                }
            }
        }
        try (PreparedStatement agreed =
                connection.prepareStatement("select work, contract_form from estimate where id = ?")) {
            agreed.setObject(1, estimate.id());
            ResultSet row = agreed.executeQuery();
            row.next();
            return new EstimateFacts(
                    estimate.words(),
                    estimate.minutes(),
                    estimate.trip(),
                    parts,
                    others,
                    estimate.validUntil(),
                    estimate.deposit(),
                    Work.of(row.getString(1)),
                    ContractForm.of(row.getString(2)));
        }
    }

    /** In place of what stood there. */
    static void write(Connection connection, UUID estimate, EstimateFacts facts) throws SQLException {
        try (PreparedStatement gone = connection.prepareStatement("delete from estimate_item where estimate_id = ?")) {
            gone.setObject(1, estimate);
            gone.executeUpdate();
        }
        Rows rows = new Rows(
                "estimate_item",
                "estimate_id uuid, position int, kind text, item_code text, quantity numeric, words text, unit text,"
                        + " unit_price_minor bigint, work text");
        for (PartItem part : facts.parts()) {
            rows.add(
                    estimate,
                    rows.size() + 1,
                    "part",
                    part.code(),
                    part.quantity().toPlainString(),
                    null,
                    null,
                    null,
                    null);
        }
        for (OtherItem other : facts.others()) {
            rows.add(
                    estimate,
                    rows.size() + 1,
                    "other",
                    null,
                    other.quantity().toPlainString(),
                    other.words().strip(),
                    other.unit(),
                    other.unitPrice().minor(),
                    other.work().code());
        }
        rows.insert(connection);
    }
}
