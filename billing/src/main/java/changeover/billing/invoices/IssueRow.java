package changeover.billing.invoices;

import changeover.contracts.words.Wording;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The issue of a document as its row says it. Seller, buyer and works are kept as the text that was hashed.
 *
 * @param terms null on documents that were issued before these were kept
 */
record IssueRow(
        UUID invoiceId,
        String kind,
        UUID customerId,
        @Nullable UUID homeId,
        @Nullable UUID creditsId,
        String series,
        long number,
        String label,
        LocalDate day,
        LocalDate taxDay,
        LocalDate dueDay,
        String language,
        String currency,
        long subtotalMinor,
        long taxMinor,
        long totalMinor,
        String seller,
        String buyer,
        String works,
        @Nullable String purchaseOrder,
        @Nullable Wording reason,
        @Nullable BusinessTerms terms) {

    static final String COLUMNS = "s.invoice_id, s.kind, s.customer_id, s.home_id, s.credits_id, s.series, s.number,"
            + " s.label, s.day, s.tax_day, s.due_day, s.language, s.currency, s.subtotal_minor, s.tax_minor,"
            + " s.total_minor, s.seller, s.buyer, s.works, s.purchase_order, s.reason_en, s.reason_fr,"
            + " s.type_code, s.buyer_reference, s.terms_en, s.terms_fr, s.untaxed_category, s.untaxed_en, s.untaxed_fr, s.form";

    /** How many columns come before those that a statement adds. */
    static final int WIDTH = 30;

    /** Documents of this form have {@link BusinessTerms}, and their hash covers them. */
    private static final int FORM = 2;

    static IssueRow of(ResultSet row) throws SQLException {
        return new IssueRow(
                row.getObject(1, UUID.class),
                row.getString(2),
                row.getObject(3, UUID.class),
                row.getObject(4, UUID.class),
                row.getObject(5, UUID.class),
                row.getString(6),
                row.getLong(7),
                row.getString(8),
                row.getObject(9, LocalDate.class),
                row.getObject(10, LocalDate.class),
                row.getObject(11, LocalDate.class),
                row.getString(12),
                row.getString(13),
                row.getLong(14),
                row.getLong(15),
                row.getLong(16),
                row.getString(17),
                row.getString(18),
                row.getString(19),
                row.getString(20),
                InvoiceRows.wording(row.getString(21), row.getString(22)),
                row.getInt(WIDTH) < FORM ? null : terms(row));
    }

    private static BusinessTerms terms(ResultSet row) throws SQLException {
        return new BusinessTerms(
                row.getString(23),
                row.getString(24),
                InvoiceRows.wording(row.getString(25), row.getString(26)),
                row.getString(27),
                InvoiceRows.wording(row.getString(28), row.getString(29)));
    }

    static Rows rows() {
        return new Rows(
                "invoice_issue",
                "id uuid, invoice_id uuid, kind text, customer_id uuid, home_id uuid, credits_id uuid, series text,"
                        + " number bigint, label text, day date, tax_day date, due_day date, language text,"
                        + " currency text, subtotal_minor bigint, tax_minor bigint, total_minor bigint, seller json,"
                        + " buyer json, works json, purchase_order text, reason_en text, reason_fr text,"
                        + " previous_hash bytea, hash bytea, batch uuid, form int, type_code text, buyer_reference text,"
                        + " terms_en text, terms_fr text, untaxed_category text, untaxed_en text, untaxed_fr text");
    }

    /** A new document always has its terms. */
    void addTo(Rows rows, byte[] previous, byte[] hash, @Nullable UUID run) {
        BusinessTerms said = Objects.requireNonNull(terms);
        rows.add(
                Drafts.newId(),
                invoiceId,
                kind,
                customerId,
                homeId,
                creditsId,
                series,
                number,
                label,
                day,
                taxDay,
                dueDay,
                language,
                currency,
                subtotalMinor,
                taxMinor,
                totalMinor,
                seller,
                buyer,
                works,
                purchaseOrder,
                reason == null ? null : reason.en(),
                reason == null ? null : reason.fr(),
                previous,
                hash,
                run,
                FORM,
                said.typeCode(),
                said.buyerReference(),
                said.terms() == null ? null : said.terms().en(),
                said.terms() == null ? null : said.terms().fr(),
                said.untaxedCategory(),
                said.untaxed() == null ? null : said.untaxed().en(),
                said.untaxed() == null ? null : said.untaxed().fr());
    }
}
