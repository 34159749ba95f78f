package changeover.web.office;

import changeover.billing.invoices.Discards;
import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.DraftByHand;
import changeover.billing.invoices.DraftsByHand;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
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
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A draft that is not to be asked for is discarded, with a reason. */
@Path("/{slug}/money/invoices/{id}/discard")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class DiscardPages {

    public record Sheet(UUID id, int version, boolean plan, boolean visit, List<String> lines) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance discard(Frame frame, Sheet sheet, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    DraftsByHand drafts;

    @Inject
    Discards discards;

    @Inject
    InvoicePages pages;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance discard(@PathParam("id") UUID id) {
        return page(drafts.of(id).orElseThrow(NotFoundException::new), Said.blank());
    }

    @POST
    public Response discard(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    if (drafts.of(id).isEmpty()) {
                        throw pages.gone(id);
                    }
                    int version = typed.whole("version", 0, Integer.MAX_VALUE);
                    String why = typed.text("why", 500);
                    typed.understood();
                    discards.discard(id, new FilledOn(version), today.day(), why);
                    return SaidOnce.at("/" + slug + "/money/invoices/" + id, "discarded");
                },
                refusals -> again(id, typed, refusals));
    }

    private TemplateInstance again(UUID id, Typed typed, List<Refusal> refusals) {
        Optional<DraftByHand> draft = drafts.of(id);
        return draft.isEmpty()
                ? pages.page(id, pages.sentences(refusals))
                : page(draft.get(), Said.again(typed, refusals, frames.locale()));
    }

    private TemplateInstance page(DraftByHand draft, Said form) {
        return Pages.discard(
                frames.of(Tab.MONEY),
                new Sheet(
                        draft.id(),
                        draft.version(),
                        draft.kind() == DocumentKind.PLAN,
                        draft.kind() == DocumentKind.VISIT,
                        draft.lines().stream().map(DraftByHand.Line::words).toList()),
                form);
    }
}
