package changeover.web.office;

import changeover.billing.collection.Mandates;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
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
import java.util.UUID;

/** Whether a customer agreed that what is due is collected from their account. */
@Path("/{slug}/money/customers/{customer}/mandate")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class MandatePages {

    /** @param signed empty when none stands */
    public record View(UUID customer, String name, String signed, String reference) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance mandate(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Mandates mandates;

    @Inject
    Customers customers;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance mandate(@PathParam("customer") UUID customer) {
        return page(customer, Said.filled(Map.of("signedOn", today.day().toString())));
    }

    @POST
    public Response sign(
            @PathParam("slug") String slug,
            @PathParam("customer") UUID customer,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = customers.get(customer).orElseThrow(NotFoundException::new);
                    var signedOn = typed.day("signedOn");
                    String reference = typed.text("reference", 60);
                    typed.understood();
                    mandates.sign(customer, signedOn, reference);
                    return SaidOnce.at("/" + slug + "/money/customers/" + customer + "/mandate", "kept");
                },
                refusals -> page(customer, Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("end")
    public Response end(@PathParam("slug") String slug, @PathParam("customer") UUID customer) {
        return desk.answer(
                () -> {
                    var _ = customers.get(customer).orElseThrow(NotFoundException::new);
                    mandates.of(customer).ifPresent(one -> mandates.end(one.id()));
                    return SaidOnce.at("/" + slug + "/money/customers/" + customer + "/mandate", "kept");
                },
                refusals ->
                        page(customer, Said.again(new Typed(new MultivaluedHashMap<>()), refusals, frames.locale())));
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        Customer customer = customers.get(id).orElseThrow(NotFoundException::new);
        View view = mandates.of(id)
                .map(one -> new View(id, customer.name(), frame.brief(one.signedOn()), one.reference()))
                .orElse(new View(id, customer.name(), "", ""));
        return Pages.mandate(frame, view, form);
    }
}
