package changeover.web.api;

import changeover.billing.documents.Document;
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
import changeover.contracts.words.Wording;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Invoices and credit notes: read, issued, credited, taken as PDF. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class InvoicesApi {

    /** A document as the API says it; amounts of a draft are what issuing it today would give. */
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
            @Nullable Amount open) {}

    /** @param unit as UN/ECE Recommendation 20 writes it */
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
            Amount net) {}

    public record TaxDocument(
            String code, String label, BigDecimal percent, Amount base, Amount amount, @Nullable String registration) {}

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

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Path("invoices/{id}")
    @Transactional
    public InvoiceDocument one(@PathParam("id") UUID id) {
        return document(id);
    }

    /** Issues a draft on the day: it is given its number and never changes again. */
    @POST
    @Path("invoices/{id}/issue")
    public Response issue(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "issue " + id + body, () -> {
            Asked asked = Asked.of(body, json);
            LocalDate day = asked.dayOrNone("day");
            asked.nothingElse().understood();
            if (invoices.draft(id).isEmpty() && invoices.view(id).isEmpty()) {
                throw new NotFoundException();
            }
            var issued = invoices.issue(id, day == null ? today.day() : day);
            return Once.Answer.done(document(issued.invoiceId()));
        });
    }

    /** The paper of an issued document, made now if it was not yet; always the same bytes. */
    @GET
    @Path("invoices/{id}.pdf")
    @jakarta.ws.rs.Produces("application/pdf")
    public Response pdf(@PathParam("id") UUID id) {
        InvoiceView view = current.run(current.id(), current.person(), () -> invoices.view(id)
                .orElseThrow(NotFoundException::new));
        PaperKind kind = view.kind() == DocumentKind.CREDIT ? PaperKind.CREDIT : PaperKind.INVOICE;
        Document paper = papers.newest(current.id(), kind, id).orElseThrow(NotFoundException::new);
        return Response.ok(paper.bytes(), "application/pdf")
                .header("Content-Disposition", "inline; filename=\"" + paper.fileName() + "\"")
                .build();
    }

    /** Credits an issued invoice: {@code invoice} and {@code why}; with {@code lines} (position, net) only in part. */
    @POST
    @Path("credits")
    public Response credit(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "credits " + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID invoice = asked.id("invoice");
            String why = asked.text("why", 500);
            List<Asked> lines = asked.each("lines");
            InvoiceView view = invoices.view(invoice).orElseThrow(NotFoundException::new);
            Map<Integer, Money> parts = new LinkedHashMap<>();
            for (Asked line : lines) {
                parts.put(line.whole("position", 1, 100_000), line.money("net", view.currency()));
                line.nothingElse();
            }
            asked.nothingElse().understood();
            var reason = new Wording(why, why);
            UUID draft = parts.isEmpty()
                    ? credits.inFull(invoice, today.day(), reason)
                    : credits.inPart(invoice, today.day(), parts, reason);
            return Once.Answer.made("/api/v1/" + slug + "/invoices/" + draft, document(draft));
        });
    }

    private InvoiceDocument document(UUID id) {
        InvoiceView view = invoices.view(id).orElse(null);
        if (view == null) {
            invoices.draft(id).orElseThrow(NotFoundException::new);
            return document(invoices.preview(id, today.day()), "draft", null);
        }
        OpenItem item = owed.item(id, today.day()).orElse(null);
        if (item == null) {
            return document(view, view.kind().code(), null);
        }
        String state = item.open().isZero() ? "paid" : item.dueDay().isBefore(today.day()) ? "overdue" : "open";
        return document(view, state, Amount.of(item.open()));
    }

    private static InvoiceDocument document(InvoiceView view, String state, @Nullable Amount open) {
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
                Amount.of(line.net()));
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
