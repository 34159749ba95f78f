package changeover.web.office;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.invoices.Discard;
import changeover.billing.invoices.Discards;
import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.DraftByHand;
import changeover.billing.invoices.DraftsByHand;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.contracts.words.Refused;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
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
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One invoice or credit note: as a draft, discarded, issued, paid, credited. */
@Path("/{slug}/money/invoices/{id}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class InvoicePages {

    /**
     * What became of a draft so far.
     *
     * @param open it may still be changed
     * @param why of its discard, empty otherwise
     * @param beyond by how much it goes beyond what the customer accepted, empty where it does not
     */
    public record Made(boolean open, boolean visitChanged, String day, String who, String why, String beyond) {}

    private static final Made ISSUED = new Made(false, false, "", "", "", "");

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance invoice(
                Frame frame, InvoicesInWords.@Nullable Sheet sheet, String refused, UUID id, Made made);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Invoices invoices;

    @Inject
    DraftsByHand drafts;

    @Inject
    Discards discards;

    @Inject
    People people;

    @Inject
    InvoicesInWords words;

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
                    if (invoices.draft(id).isEmpty()) {
                        var _ = discards.of(id).orElseThrow(NotFoundException::new);
                    }
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
        return PaperAnswer.of(paper);
    }

    TemplateInstance page(UUID id, String refused) {
        Frame frame = frames.of(Tab.MONEY);
        InvoiceView view = invoices.view(id).orElse(null);
        if (view != null) {
            return Pages.invoice(frame, words.of(view, frame), refused, id, ISSUED);
        }
        Made made = made(id, frame);
        try {
            var sheet = words.of(invoices.preview(id, frame.today()), frame);
            return Pages.invoice(frame, sheet, refused, id, made);
        } catch (Refused notYet) {
            return Pages.invoice(frame, null, sentences(notYet.refusals()), id, made);
        }
    }

    private Made made(UUID id, Frame frame) {
        Discard discard = discards.of(id).orElse(null);
        if (discard != null) {
            String who = discard.by() == null
                    ? ""
                    : people.of(discard.by()).map(Membership::name).orElse("");
            return new Made(false, false, frame.inWords(discard.day()), who, discard.why(), "");
        }
        DraftByHand draft = drafts.of(id).orElseThrow(NotFoundException::new);
        return new Made(
                true,
                draft.visitChanged(),
                "",
                "",
                "",
                invoices.beyondAccepted(id)
                        .map(refusal -> sentences(List.of(refusal)))
                        .orElse(""));
    }

    /** Why there is no draft any more, to be said on its page; an id of nobody's is not found. */
    RuntimeException gone(UUID id) {
        Refusal why = invoices.notADraft(id);
        return why.code().equals("invoice.not-found") ? new NotFoundException() : why.thrown();
    }

    String sentences(List<Refusal> refusals) {
        return refusals.stream()
                .map(refusal -> Refusals.sentence(refusal, frames.locale()))
                .reduce((a, b) -> a + " " + b)
                .orElse("");
    }
}
