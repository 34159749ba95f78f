package changeover.billing.invoices;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A line as its row says it: what is printed, hashed and taxed is read from here alone. */
record LineRow(
        UUID invoiceId,
        int position,
        @Nullable UUID homeId,
        @Nullable UUID agreementId,
        @Nullable UUID visitId,
        LocalDate day,
        String kind,
        @Nullable String itemCode,
        @Nullable String partKind,
        String coverage,
        Work work,
        ContractForm form,
        Wording words,
        Wording why,
        BigDecimal quantity,
        String unit,
        @Nullable Long unitPriceMinor,
        BigDecimal discountPercent,
        long discountMinor,
        long netMinor,
        boolean byHand) {

    static final String COLUMNS =
            "invoice_id, position, home_id, agreement_id, visit_id, day, kind, item_code, part_kind,"
                    + " coverage, work, contract_form, words_en, words_fr, why_en, why_fr, quantity, unit, unit_price_minor,"
                    + " discount_percent, discount_minor, net_minor, by_hand";

    static LineRow of(ResultSet row) throws SQLException {
        return new LineRow(
                row.getObject(1, UUID.class),
                row.getInt(2),
                row.getObject(3, UUID.class),
                row.getObject(4, UUID.class),
                row.getObject(5, UUID.class),
                row.getObject(6, LocalDate.class),
                row.getString(7),
                row.getString(8),
                row.getString(9),
                row.getString(10),
                Work.of(row.getString(11)),
                ContractForm.of(row.getString(12)),
                new Wording(row.getString(13), row.getString(14)),
                new Wording(row.getString(15), row.getString(16)),
                row.getBigDecimal(17),
                row.getString(18),
                row.getObject(19, Long.class),
                row.getBigDecimal(20),
                row.getLong(21),
                row.getLong(22),
                row.getBoolean(23));
    }

    /** The same line on another document. */
    LineRow at(UUID otherInvoice, int otherPosition) {
        return new LineRow(
                otherInvoice,
                otherPosition,
                homeId,
                agreementId,
                visitId,
                day,
                kind,
                itemCode,
                partKind,
                coverage,
                work,
                form,
                words,
                why,
                quantity,
                unit,
                unitPriceMinor,
                discountPercent,
                discountMinor,
                netMinor,
                byHand);
    }

    /** Something is to be paid, and the price book has no price for it yet. */
    boolean waitsForPrice() {
        return unitPriceMinor == null && !coverage.equals("included");
    }

    InvoiceView.Line view(Currency currency) {
        return new InvoiceView.Line(
                position,
                kind,
                itemCode,
                coverage,
                day,
                words,
                why,
                quantity.stripTrailingZeros(),
                unit,
                unitPriceMinor == null ? null : new Money(unitPriceMinor, currency),
                discountPercent.stripTrailingZeros(),
                new Money(discountMinor, currency),
                new Money(netMinor, currency),
                homeId,
                visitId,
                byHand,
                work,
                form);
    }
}
