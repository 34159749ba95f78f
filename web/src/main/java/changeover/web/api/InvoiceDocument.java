package changeover.web.api;

import changeover.billing.invoices.InvoiceView;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A document as the API says it; amounts of a draft are what issuing it today would give.
 *
 * @param paidBefore what was paid by the moment of issuing, as its paper says
 */
public record InvoiceDocument(
        UUID id,
        String kind,
        String state,
        @Nullable String number,
        LocalDate day,
        LocalDate due,
        UUID customer,
        @Nullable UUID home,
        @Nullable UUID agreement,
        @Nullable UUID visit,
        String language,
        List<LineDocument> lines,
        List<TaxDocument> taxes,
        Amount subtotal,
        Amount tax,
        Amount total,
        Amount paidBefore,
        @Nullable Amount open) {

    /**
     * @param unit as UN/ECE Recommendation 20 writes it
     * @param byHand whether a person wrote or changed it
     * @param work, form decide its taxes, with the place
     */
    public record LineDocument(
            int position,
            String kind,
            String coverage,
            String words,
            String why,
            BigDecimal quantity,
            String unit,
            @Nullable Amount unitPrice,
            Amount discount,
            Amount net,
            boolean byHand,
            String work,
            String form) {}

    public record TaxDocument(
            String code,
            String label,
            BigDecimal percent,
            Amount base,
            Amount amount,
            @Nullable String registration) {}

    static InvoiceDocument of(InvoiceView view, String state, @Nullable Amount open) {
        return new InvoiceDocument(
                view.id(),
                view.kind().code(),
                state,
                view.label(),
                view.day(),
                view.dueDay(),
                view.customerId(),
                view.homeId(),
                view.agreementId(),
                view.visitId(),
                view.language().toLanguageTag(),
                view.lines().stream().map(line -> line(line, view)).toList(),
                view.taxes().stream().map(tax -> tax(tax, view)).toList(),
                Amount.of(view.subtotal()),
                Amount.of(view.tax()),
                Amount.of(view.total()),
                Amount.of(view.paidBefore()),
                open);
    }

    private static LineDocument line(InvoiceView.Line line, InvoiceView view) {
        return new LineDocument(
                line.position(),
                line.kind(),
                line.coverage(),
                line.words().in(view.language()),
                line.why().in(view.language()),
                line.quantity(),
                line.unit(),
                line.unitPrice() == null ? null : Amount.of(line.unitPrice()),
                Amount.of(line.discount()),
                Amount.of(line.net()),
                line.byHand(),
                line.work().code(),
                line.form().code());
    }

    private static TaxDocument tax(InvoiceView.Tax tax, InvoiceView view) {
        return new TaxDocument(
                tax.code(),
                tax.label().in(view.language()),
                tax.percent(),
                Amount.of(tax.base()),
                Amount.of(tax.amount()),
                tax.registration());
    }
}
