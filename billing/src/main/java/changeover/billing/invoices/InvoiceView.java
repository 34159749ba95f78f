package changeover.billing.invoices;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A document as it is printed: of an issued one every word is the frozen row's, of a draft it is what issuing on
 * {@code day} would give.
 *
 * @param label the number as printed, {@code F-2026-0391}; null on a draft
 * @param creditsLabel the number of the invoice that a credit note corrects
 * @param taxDay the day whose rates were used: the earlier of the day paid and the invoice's date
 * @param works where the work was done: one place, or several on one payer's joint invoice
 * @param buyerReference what the payer asked to read on it
 * @param untaxed why some lines bear no tax at all, null where each has one
 * @param language of the document, the customer's
 * @param paidBefore what was paid of it before it was issued, of a draft what was paid so far and what its deposits would pay; never more than its total
 */
public record InvoiceView(
        UUID id,
        DocumentKind kind,
        @Nullable String label,
        @Nullable UUID creditsId,
        @Nullable String creditsLabel,
        LocalDate day,
        LocalDate taxDay,
        LocalDate dueDay,
        UUID customerId,
        @Nullable UUID homeId,
        @Nullable UUID agreementId,
        @Nullable UUID visitId,
        Locale language,
        Currency currency,
        Seller seller,
        Buyer buyer,
        List<WorkPlace> works,
        @Nullable String purchaseOrder,
        @Nullable String buyerReference,
        @Nullable Wording reason,
        @Nullable Wording untaxed,
        List<Line> lines,
        List<Tax> taxes,
        Money subtotal,
        Money tax,
        Money total,
        Money paidBefore) {

    /** What was left to pay of it when it was issued. */
    public Money leftToPay() {
        return total.minus(paidBefore);
    }

    public boolean issued() {
        return label != null;
    }

    /** The same document said in another language. */
    public InvoiceView in(Locale other) {
        return new InvoiceView(
                id,
                kind,
                label,
                creditsId,
                creditsLabel,
                day,
                taxDay,
                dueDay,
                customerId,
                homeId,
                agreementId,
                visitId,
                other,
                currency,
                seller,
                buyer,
                works,
                purchaseOrder,
                buyerReference,
                reason,
                untaxed,
                lines,
                taxes,
                subtotal,
                tax,
                total,
                paidBefore);
    }

    /**
     * @param coverage included, discounted or billable
     * @param why the reason that stands under the line
     * @param unitPrice null on a draft while the price book has none
     * @param homeId the place of this line's work, null where the document has one place only
     * @param byHand whether a person wrote or changed it
     */
    public record Line(
            int position,
            String kind,
            @Nullable String itemCode,
            String coverage,
            LocalDate day,
            Wording words,
            Wording why,
            BigDecimal quantity,
            String unit,
            @Nullable Money unitPrice,
            BigDecimal discountPercent,
            Money discount,
            Money net,
            @Nullable UUID homeId,
            @Nullable UUID visitId,
            boolean byHand,
            Work work,
            ContractForm form) {}

    /** @param registration the number under which this tax is collected, null where there is none */
    public record Tax(
            String code,
            Wording label,
            String category,
            BigDecimal percent,
            Money base,
            Money amount,
            String region,
            @Nullable String registration,
            String source,
            List<Integer> lines) {}
}
