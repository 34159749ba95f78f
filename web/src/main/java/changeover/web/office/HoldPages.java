package changeover.web.office;

import changeover.billing.payments.Owed;
import changeover.billing.reminders.Hold;
import changeover.billing.reminders.Holds;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
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
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** A customer who is not reminded, of everything or of one document, and why. */
@Path("/{slug}/money")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class HoldPages {

    /** @param ended the day somebody ended it; empty when nobody did */
    public record Row(
            UUID id,
            String day,
            String document,
            String kind,
            String why,
            String until,
            String ended,
            boolean stands) {}

    public record Open(String id, String words) {}

    public record View(UUID customer, String name, List<Open> open, List<Row> rows) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance holds(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Holds holds;

    @Inject
    Owed owed;

    @Inject
    Customers customers;

    @GET
    @Path("customers/{customer}/holds")
    @Transactional
    public TemplateInstance list(@PathParam("customer") UUID customer) {
        return page(customer, Said.filled(Map.of("kind", "dispute")));
    }

    @POST
    @Path("customers/{customer}/holds")
    public Response hold(
            @PathParam("slug") String slug,
            @PathParam("customer") UUID customer,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = customers.get(customer).orElseThrow(NotFoundException::new);
                    UUID invoice = typed.idOrNone("invoice");
                    Hold.Why kind = Hold.Why.of(typed.oneOf("kind", Set.of("dispute", "promise", "hold")))
                            .orElseThrow();
                    String why = typed.text("why", 300);
                    var until = typed.dayOrNone("until");
                    typed.understood();
                    holds.hold(customer, invoice, kind, why, until);
                    return SaidOnce.at("/" + slug + "/money/customers/" + customer + "/holds", "kept");
                },
                refusals -> page(customer, Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("holds/{id}/end")
    public Response end(@PathParam("slug") String slug, @PathParam("id") UUID id) {
        return desk.answer(
                () -> {
                    Hold hold = holds.one(id).orElseThrow(NotFoundException::new);
                    holds.end(id);
                    return SaidOnce.at("/" + slug + "/money/customers/" + hold.customerId() + "/holds", "kept");
                },
                refusals -> page(
                        holds.one(id).orElseThrow(NotFoundException::new).customerId(),
                        Said.again(new Typed(new MultivaluedHashMap<>()), refusals, frames.locale())));
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        Customer customer = customers.get(id).orElseThrow(NotFoundException::new);
        List<Open> open = owed.open(id, frame.today()).stream()
                .map(item -> new Open(
                        item.invoiceId().toString(),
                        item.label() + ", " + item.open().format(frame.locale())))
                .toList();
        List<Row> rows = holds.of(id).stream().map(hold -> row(hold, frame)).toList();
        return Pages.holds(frame, new View(id, customer.name(), open, rows), form);
    }

    private static Row row(Hold hold, Frame frame) {
        return new Row(
                hold.id(),
                frame.brief(hold.day()),
                hold.label() == null ? "" : hold.label(),
                hold.kind().code(),
                hold.why(),
                hold.until() == null ? "" : frame.brief(hold.until()),
                hold.ended() == null ? "" : frame.brief(hold.ended()),
                hold.stands(frame.today()));
    }
}
