package changeover.billing.invoices;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A tax as its row says it, frozen when the document was issued.
 *
 * @param exemption why nothing is charged, null where something is
 */
record PrintedTax(
        UUID invoiceId,
        int position,
        String code,
        Wording label,
        String category,
        BigDecimal percent,
        long baseMinor,
        long amountMinor,
        String region,
        @Nullable String registration,
        String source,
        @Nullable Wording exemption,
        List<Integer> lines) {

    static final String COLUMNS = "invoice_id, position, code, label_en, label_fr, category, percent, base_minor,"
            + " amount_minor, region, registration, source, lines, exemption_en, exemption_fr";

    static PrintedTax of(ResultSet row) throws SQLException {
        return new PrintedTax(
                row.getObject(1, UUID.class),
                row.getInt(2),
                row.getString(3),
                new Wording(row.getString(4), row.getString(5)),
                row.getString(6),
                row.getBigDecimal(7),
                row.getLong(8),
                row.getLong(9),
                row.getString(10),
                row.getString(11),
                row.getString(12),
                InvoiceRows.wording(row.getString(14), row.getString(15)),
                Arrays.asList((Integer[]) row.getArray(13).getArray()));
    }

    void addTo(Rows rows) {
        rows.add(
                Drafts.newId(),
                invoiceId,
                position,
                code,
                label.en(),
                label.fr(),
                category,
                percent.toPlainString(),
                baseMinor,
                amountMinor,
                region,
                registration,
                source,
                lines.toString().replace('[', '{').replace(']', '}'),
                exemption == null ? null : exemption.en(),
                exemption == null ? null : exemption.fr());
    }

    static Rows rows() {
        return new Rows(
                "invoice_tax",
                "id uuid, invoice_id uuid, position int, code text, label_en text, label_fr text, category text,"
                        + " percent numeric, base_minor bigint, amount_minor bigint, region text, registration text,"
                        + " source text, lines int[], exemption_en text, exemption_fr text");
    }

    InvoiceView.Tax view(Currency currency) {
        return new InvoiceView.Tax(
                code,
                label,
                category,
                percent.stripTrailingZeros(),
                new Money(baseMinor, currency),
                new Money(amountMinor, currency),
                region,
                registration,
                source,
                lines);
    }
}
