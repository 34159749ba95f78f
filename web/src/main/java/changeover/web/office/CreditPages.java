package changeover.web.office;

import changeover.billing.invoices.Credits;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
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
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/** An issued invoice is given back, whole or in part, by a credit note. */
@Path("/{slug}/money/invoices/{id}/credit")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class CreditPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance credit(Frame frame, InvoicesInWords.Sheet sheet, boolean alsoFrench, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Businesses businesses;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    InvoicesInWords words;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance credit(@PathParam("id") UUID id) {
        return creditPage(id, Said.blank());
    }

    /** In full when no line is filled, else what each line says. */
    @POST
    public Response credit(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    InvoiceView view = invoices.view(id).orElseThrow(NotFoundException::new);
                    String why = typed.text("why", 500);
                    String french = typed.line("whyFr", 500);
                    Map<Integer, Money> parts = new LinkedHashMap<>();
                    for (InvoiceView.Line line : view.lines()) {
                        String field = "line" + line.position();
                        if (typed.line(field, 20) != null) {
                            parts.put(line.position(), typed.money(field, view.currency()));
                        }
                    }
                    typed.understood();
                    var reason = new Wording(why, french == null ? why : french);
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
        return Pages.credit(frame, words.of(view, frame), alsoFrench(view), form);
    }

    /** In Quebec the French of a paper counts, whatever its reader asked for: then the reason is asked for in both. */
    private boolean alsoFrench(InvoiceView view) {
        return businesses.profile().facts().inQuebec()
                && !view.language().getLanguage().equals("fr");
    }
}
