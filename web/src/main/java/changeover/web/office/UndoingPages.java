package changeover.web.office;

import changeover.billing.payments.Payment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Returns;
import changeover.billing.payments.Undoing;
import changeover.contracts.tenants.Today;
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
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** A payment that did not hold, or was noted by mistake: undone on a day, with its reason. */
@Path("/{slug}/money/payments/{id}/undoing")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class UndoingPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance undoing(Frame frame, UUID id, String noted, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    Payments payments;

    @Inject
    Returns returns;

    @GET
    @Transactional
    public TemplateInstance undoing(@PathParam("id") UUID id) {
        return page(id, Said.filled(Map.of("day", today.day().toString())));
    }

    @POST
    public Response undo(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Payment payment = payments.of(id).orElseThrow(NotFoundException::new);
                    String how = typed.oneOf("how", Set.of("bounced", "mistake"));
                    var day = typed.day("day");
                    String why = typed.text("why", 500);
                    typed.understood();
                    boolean fee = false;
                    if (how.equals("bounced")) {
                        fee = returns.back(id, day, why).isPresent();
                    } else {
                        payments.undo(id, Undoing.How.MISTAKE, day, why);
                    }
                    return SaidOnce.at(
                            "/" + slug + "/money/customers/" + payment.customerId(),
                            fee ? "payment-returned-fee" : "kept");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale())));
    }

    /** In one click: the bank returned it today; what it paid is open again and the place's fee is drafted. */
    @POST
    @Path("return")
    public Response giveBack(@PathParam("slug") String slug, @PathParam("id") UUID id) {
        return desk.answer(
                () -> {
                    Payment payment = payments.of(id).orElseThrow(NotFoundException::new);
                    String why = frames.locale().getLanguage().equals("fr")
                            ? "Retourné par la banque"
                            : "Returned by the bank";
                    boolean fee = returns.back(id, today.day(), why).isPresent();
                    return SaidOnce.at(
                            "/" + slug + "/money/customers/" + payment.customerId(),
                            fee ? "payment-returned-fee" : "payment-returned");
                },
                refusals -> page(id, Said.again(new Typed(new MultivaluedHashMap<>()), refusals, frames.locale())));
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        Payment payment = payments.of(id).orElseThrow(NotFoundException::new);
        return Pages.undoing(
                frame, id, payment.amount().format(frame.locale()) + ", " + frame.inWords(payment.day()), form);
    }
}
