package changeover.billing.invoices;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A draft's line with what a person made of it. */
record HandRow(
        UUID id,
        int position,
        @Nullable UUID homeId,
        @Nullable UUID visitId,
        LocalDate day,
        String kind,
        @Nullable String item,
        String coverage,
        Wording words,
        BigDecimal quantity,
        String unit,
        @Nullable Money unitPrice,
        BigDecimal discountPercent,
        Money net,
        boolean byHand,
        @Nullable BigDecimal reckonedQuantity,
        @Nullable Long reckonedMinor,
        boolean visitChanged,
        Work work,
        ContractForm form) {

    static List<HandRow> of(Connection connection, UUID draft, Currency currency) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select id, position, home_id, visit_id, day, kind, item_code, coverage, words_en, words_fr, quantity, unit,
                       unit_price_minor, discount_percent, net_minor, by_hand, reckoned_quantity, reckoned_minor,
                       visit_changed, work, contract_form
                  from invoice_line where invoice_id = ? order by position""")) {
            select.setObject(1, draft);
            List<HandRow> rows = new ArrayList<>();
            ResultSet row = select.executeQuery();
            while (row.next()) {
                rows.add(of(row, currency));
            }
            return rows;
        }
    }

    private static HandRow of(ResultSet row, Currency currency) throws SQLException {
        Long price = row.getObject(13, Long.class);
        boolean byHand = row.getBoolean(16);
        return new HandRow(
                row.getObject(1, UUID.class),
                row.getInt(2),
                row.getObject(3, UUID.class),
                row.getObject(4, UUID.class),
                row.getObject(5, LocalDate.class),
                row.getString(6),
                row.getString(7),
                row.getString(8),
                new Wording(row.getString(9), row.getString(10)),
                row.getBigDecimal(11),
                row.getString(12),
                price == null ? null : new Money(price, currency),
                row.getBigDecimal(14),
                new Money(row.getLong(15), currency),
                byHand,
                byHand ? row.getBigDecimal(17) : row.getBigDecimal(11),
                byHand ? row.getObject(18, Long.class) : Long.valueOf(row.getLong(15)),
                row.getBoolean(19),
                Work.of(row.getString(20)),
                ContractForm.of(row.getString(21)));
    }

    boolean included() {
        return coverage.equals("included");
    }

    DraftByHand.Line shown(Locale language) {
        return new DraftByHand.Line(
                id,
                position,
                words.in(language),
                quantity.stripTrailingZeros(),
                unit,
                unitPrice,
                included(),
                byHand,
                visitChanged,
                work,
                form,
                words.fr());
    }
}
