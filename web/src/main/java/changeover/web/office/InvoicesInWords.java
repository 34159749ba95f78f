package changeover.web.office;

import changeover.billing.documents.Words;
import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.payments.OpenItem;
import changeover.billing.payments.Owed;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;

/** Puts invoices and credit notes into the words and amounts of a page. */
@ApplicationScoped
public class InvoicesInWords {

    /** A document in words and amounts. */
    public record Sheet(
            UUID id,
            boolean credit,
            String label,
            String day,
            String dueDay,
            String buyer,
            UUID customerId,
            String works,
            String purchaseOrder,
            List<Line> lines,
            List<Tax> taxes,
            String subtotal,
            String total,
            String still,
            String givenUp,
            boolean owes,
            boolean paid,
            boolean credited) {}

    public record Line(
            int position,
            String quantity,
            String words,
            String why,
            String price,
            String discount,
            String net,
            boolean charged,
            boolean byHand) {

        /** The field of this line on the form of a credit. */
        public String field() {
            return "line" + position;
        }
    }

    public record Tax(String label, String registration, String amount) {}

    @Inject
    Owed owed;

    Sheet of(InvoiceView view, Frame frame) {
        OpenItem item = view.issued() ? owed.item(view.id(), frame.today()).orElse(null) : null;
        return new Sheet(
                view.id(),
                view.kind() == DocumentKind.CREDIT,
                view.label() == null ? "" : view.label(),
                frame.inWords(view.day()),
                frame.inWords(view.dueDay()),
                view.buyer().name(),
                view.customerId(),
                view.works().stream()
                        .map(work ->
                                work.street() + (work.unit().isEmpty() ? "" : ", " + work.unit()) + ", " + work.city())
                        .reduce((a, b) -> a + "; " + b)
                        .orElse(""),
                view.purchaseOrder() == null ? "" : view.purchaseOrder(),
                view.lines().stream().map(line -> line(line, frame)).toList(),
                view.taxes().stream()
                        .map(tax -> new Tax(
                                tax.label().in(frame.locale()),
                                tax.registration() == null ? "" : tax.registration(),
                                tax.amount().format(frame.locale())))
                        .toList(),
                view.subtotal().format(frame.locale()),
                view.total().format(frame.locale()),
                item == null ? "" : item.open().format(frame.locale()),
                item == null || item.givenUp().isZero() ? "" : item.givenUp().format(frame.locale()),
                item != null && item.open().isPositive(),
                item != null && item.open().isZero() && item.givenUp().isZero() && !item.creditedInFull(),
                item != null && item.creditedInFull());
    }

    private static Line line(InvoiceView.Line line, Frame frame) {
        String figure = plain(line.quantity());
        String unit = Words.in(frame.locale()).unit(line.unit());
        return new Line(
                line.position(),
                (frame.locale().getLanguage().equals("fr") ? figure.replace('.', ',') : figure)
                        + (unit.isEmpty() ? "" : "\u00a0" + unit),
                line.words().in(frame.locale()),
                line.why().in(frame.locale()),
                line.unitPrice() == null ? "" : line.unitPrice().format(frame.locale()),
                line.discount().isZero() ? "" : line.discount().format(frame.locale()),
                line.net().format(frame.locale()),
                line.net().isPositive(),
                line.byHand());
    }

    private static String plain(BigDecimal quantity) {
        return quantity.setScale(Math.max(0, quantity.stripTrailingZeros().scale()))
                .toPlainString();
    }
}
