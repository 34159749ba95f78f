package changeover.web.api;

import changeover.billing.documents.Document;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.web.session.Once;
import changeover.web.session.PaperAnswer;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Invoices and credit notes: read, issued, credited, taken as PDF. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class InvoicesApi {

    /** A document in a list: before tax on a draft, tax included once issued. */
    public record InvoiceRow(
            UUID id,
            String kind,
            String state,
            @Nullable String number,
            UUID customer,
            @Nullable UUID home,
            LocalDate day,
            @Nullable LocalDate due,
            Amount amount,
            Amount open) {}

    @Inject
    Invoices invoices;

    @Inject
    InvoiceLists lists;

    @Inject
    InvoiceDocuments documents;

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

    /** Documents, the newest first; of one customer, home, agreement or visit when that is asked. */
    @GET
    @Path("invoices")
    @Transactional
    public List<InvoiceRow> list(
            @Nullable @QueryParam("customer") UUID customer,
            @Nullable @QueryParam("home") UUID home,
            @Nullable @QueryParam("agreement") UUID agreement,
            @Nullable @QueryParam("visit") UUID visit,
            @QueryParam("skip") @DefaultValue("0") int skip,
            @QueryParam("count") @DefaultValue("100") int count) {
        return lists
                .rows(
                        new InvoiceFilter(
                                Set.of(),
                                customer,
                                home,
                                agreement,
                                visit,
                                null,
                                Math.clamp(skip, 0, 1_000_000),
                                Math.clamp(count, 1, 1000)),
                        today.day())
                .stream()
                .map(InvoicesApi::row)
                .toList();
    }

    /** A draft comes with its edition, for who changes or discards it; with its state alone while its taxes are not known. */
    @GET
    @Path("invoices/{id}")
    @Transactional
    public Response one(@PathParam("id") UUID id) {
        Object document = documents.readable(id);
        return invoices.draft(id)
                .map(draft -> Edition.of(document, draft.version()))
                .orElseGet(() -> Response.ok(document).build());
    }

    /** Issues a draft on the day: it is given its number and never changes again. */
    @POST
    @Path("invoices/{id}/issue")
    public Response issue(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "issue " + id + body, () -> {
            if (invoices.draft(id).isEmpty() && invoices.notADraft(id).code().equals("invoice.not-found")) {
                throw new NotFoundException();
            }
            Asked asked = Asked.of(body, json);
            LocalDate day = asked.dayOrNone("day");
            asked.nothingElse().understood();
            if (day != null && day.isAfter(today.day())) {
                throw Refusal.of("run.day-to-come").at("day").thrown();
            }
            var issued = invoices.issue(id, day == null ? today.day() : day);
            return Once.Answer.done(documents.of(issued.invoiceId()));
        });
    }

    /** The paper of an issued document, made now if it was not yet; always the same bytes. */
    @GET
    @Path("invoices/{id}.pdf")
    @jakarta.ws.rs.Produces("application/pdf")
    public Response pdf(@PathParam("id") UUID id) {
        InvoiceView view = current.run(
                current.id(), current.person(), () -> invoices.view(id).orElseThrow(NotFoundException::new));
        PaperKind kind = view.kind() == DocumentKind.CREDIT ? PaperKind.CREDIT : PaperKind.INVOICE;
        Document paper = papers.newest(current.id(), kind, id).orElseThrow(NotFoundException::new);
        return PaperAnswer.of(paper);
    }

    private static InvoiceRow row(changeover.billing.payments.InvoiceRow row) {
        return new InvoiceRow(
                row.id(),
                row.kind().code(),
                row.standing().code(),
                row.label(),
                row.customerId(),
                row.homeId(),
                row.day(),
                row.dueDay(),
                Amount.of(row.amount()),
                Amount.of(row.open()));
    }
}
