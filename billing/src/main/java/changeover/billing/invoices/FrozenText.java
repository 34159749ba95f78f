package changeover.billing.invoices;

import changeover.contracts.digests.Sha256;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The text that a document's hash covers: every frozen field in one fixed order, each with its length before it, so that
 * no two documents have the same text.
 *
 * <p>A document's hash is SHA-256 over the hash before it in its series and its text in UTF-8. The first of a series
 * follows {@link #NOTHING}. The text of documents issued before they had {@link BusinessTerms} is without them.
 */
final class FrozenText {

    static final byte[] NOTHING = new byte[32];

    private static final String FIRST_FORM = "changeover-1";
    private static final String FORM = "changeover-2";

    private final StringBuilder text = new StringBuilder(2048);

    private FrozenText() {}

    static byte[] hash(byte[] previous, IssueRow issue, List<LineRow> lines, List<PrintedTax> taxes) {
        FrozenText frozen = new FrozenText();
        frozen.head(issue);
        boolean second = issue.terms() != null;
        lines.forEach(line -> frozen.line(line, second));
        taxes.forEach(tax -> frozen.tax(tax, second));
        MessageDigest digest = Sha256.begun();
        digest.update(previous);
        return digest.digest(frozen.text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private void head(IssueRow issue) {
        BusinessTerms terms = issue.terms();
        add(
                terms == null ? FIRST_FORM : FORM,
                issue.invoiceId(),
                issue.kind(),
                issue.customerId(),
                issue.homeId(),
                issue.creditsId());
        add(issue.series(), issue.number(), issue.label(), issue.day(), issue.taxDay(), issue.dueDay());
        add(issue.language(), issue.currency(), issue.subtotalMinor(), issue.taxMinor(), issue.totalMinor());
        add(issue.seller(), issue.buyer(), issue.works(), issue.purchaseOrder());
        words(issue.reason());
        if (terms != null) {
            add(terms.typeCode(), terms.buyerReference());
            words(terms.terms());
            add(terms.untaxedCategory());
            words(terms.untaxed());
        }
    }

    private void words(@Nullable Wording wording) {
        add(wording == null ? null : wording.en());
        add(wording == null ? null : wording.fr());
    }

    private void line(LineRow line, boolean second) {
        add("line", line.position(), line.homeId(), line.agreementId(), line.visitId(), line.day(), line.kind());
        add(
                line.itemCode(),
                line.partKind(),
                line.coverage(),
                line.work().code(),
                line.form().code());
        add(line.words().en(), line.words().fr(), line.why().en(), line.why().fr());
        add(plain(line.quantity()), line.unit(), line.unitPriceMinor(), plain(line.discountPercent()));
        add(line.discountMinor(), line.netMinor());
        if (second) {
            add(line.byHand());
        }
    }

    private void tax(PrintedTax tax, boolean second) {
        add("tax", tax.position(), tax.code(), tax.label().en(), tax.label().fr(), tax.category());
        add(plain(tax.percent()), tax.baseMinor(), tax.amountMinor(), tax.region(), tax.registration());
        add(tax.source(), tax.lines());
        if (second) {
            words(tax.exemption());
        }
    }

    private void add(@Nullable Object... fields) {
        for (Object field : fields) {
            if (field == null) {
                text.append("-;");
            } else {
                String said = field.toString();
                text.append(said.length()).append(':').append(said).append(';');
            }
        }
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }
}
