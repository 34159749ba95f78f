package changeover.web.office;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.billing.payments.OpenItem;
import changeover.billing.payments.Owed;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.contracts.words.Wording;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One invoice or credit note: as a draft, issued, paid, credited. */
@Path("/{slug}/money/invoices/{id}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class InvoicePages {

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
            boolean paid) {}

    public record Line(
            int position,
            String quantity,
            String words,
            String why,
            String price,
            String discount,
            String net,
            boolean charged) {

        /** The field of this line on the form of a credit. */
        public String field() {
            return "line" + position;
        }
    }

    public record Tax(String label, String registration, String amount) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance invoice(Frame frame, @Nullable Sheet sheet, String refused, UUID id);

        static native TemplateInstance credit(Frame frame, Sheet sheet, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Owed owed;

    @Inject
    DocumentsToMake papers;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance invoice(@PathParam("id") UUID id) {
        return page(id, "");
    }

    @POST
    @Path("issue")
    public Response issue(@PathParam("slug") String slug, @PathParam("id") UUID id) {
        return desk.answer(
                () -> {
                    var _ = invoices.draft(id).orElseThrow(NotFoundException::new);
                    UUID issued = invoices.issue(id, today.day()).invoiceId();
                    return SaidOnce.at("/" + slug + "/money/invoices/" + issued, "issued");
                },
                refusals -> page(id, sentences(refusals)));
    }

    @GET
    @Path("pdf")
    @Produces("application/pdf")
    public Response pdf(@PathParam("id") UUID id) {
        InvoiceView view = current.run(
                current.id(), current.person(), () -> invoices.view(id).orElseThrow(NotFoundException::new));
        PaperKind kind = view.kind() == DocumentKind.CREDIT ? PaperKind.CREDIT : PaperKind.INVOICE;
        var paper = papers.newest(current.id(), kind, id).orElseThrow(NotFoundException::new);
        return Response.ok(paper.bytes(), "application/pdf")
                .header("Content-Disposition", "inline; filename=\"" + paper.fileName() + "\"")
                .build();
    }

    @GET
    @Path("credit")
    @Transactional
    public TemplateInstance credit(@PathParam("id") UUID id) {
        return creditPage(id, Said.blank());
    }

    /** In full when no line is filled, else what each line says. */
    @POST
    @Path("credit")
    public Response credit(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    InvoiceView view = invoices.view(id).orElseThrow(NotFoundException::new);
                    String why = typed.text("why", 500);
                    Map<Integer, Money> parts = new LinkedHashMap<>();
                    for (InvoiceView.Line line : view.lines()) {
                        String field = "line" + line.position();
                        if (typed.line(field, 20) != null) {
                            parts.put(line.position(), typed.money(field, view.currency()));
                        }
                    }
                    typed.understood();
                    var reason = new Wording(why, why);
                    UUID draft = parts.isEmpty()
                            ? credits.inFull(id, today.day(), reason)
                            : credits.inPart(id, today.day(), parts, reason);
                    return SaidOnce.at("/" + slug + "/money/invoices/" + draft, "credit-drafted");
                },
                refusals -> creditPage(id, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance creditPage(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        InvoiceView view = invoices.view(id).orElseThrow(NotFoundException::new);
        return Pages.credit(frame, sheet(view, frame), form);
    }

    private TemplateInstance page(UUID id, String refused) {
        Frame frame = frames.of(Tab.MONEY);
        InvoiceView view = invoices.view(id).orElse(null);
        if (view != null) {
            return Pages.invoice(frame, sheet(view, frame), refused, id);
        }
        var _ = invoices.draft(id).orElseThrow(NotFoundException::new);
        try {
            return Pages.invoice(frame, sheet(invoices.preview(id, frame.today()), frame), refused, id);
        } catch (changeover.contracts.words.Refused notYet) {
            return Pages.invoice(frame, null, sentences(notYet.refusals()), id);
        }
    }

    private String sentences(List<Refusal> refusals) {
        return refusals.stream()
                .map(refusal -> Refusals.sentence(refusal, frames.locale()))
                .reduce((a, b) -> a + " " + b)
                .orElse("");
    }

    private Sheet sheet(InvoiceView view, Frame frame) {
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
                item != null && item.open().isZero());
    }

    private static Line line(InvoiceView.Line line, Frame frame) {
        BigDecimal quantity = line.quantity().stripTrailingZeros();
        String figure = (quantity.scale() < 0 ? quantity.setScale(0) : quantity).toPlainString();
        return new Line(
                line.position(),
                frame.locale().getLanguage().equals("fr") ? figure.replace('.', ',') : figure,
                line.words().in(frame.locale()),
                line.why().in(frame.locale()),
                line.unitPrice() == null ? "" : line.unitPrice().format(frame.locale()),
                line.discount().isZero() ? "" : line.discount().format(frame.locale()),
                line.net().format(frame.locale()),
                line.net().isPositive());
    }
}
