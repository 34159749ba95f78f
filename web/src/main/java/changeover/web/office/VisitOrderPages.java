package changeover.web.office;

import changeover.contracts.tenants.Today;
import changeover.scheduling.orders.PartOrders;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderChoices;
import changeover.web.session.OrderTyped;
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
import java.util.Map;
import java.util.UUID;

/** The office orders the part that a visit waits for. */
@Path("/{slug}/visits/{id}/orders")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class VisitOrderPages {

    private static final int USUAL_DAYS = 3;

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance neworder(
                Frame frame,
                UUID visit,
                UUID homeId,
                String home,
                List<OrderChoices.Choice> parts,
                List<OrderChoices.Choice> machines,
                String operation,
                Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    VisitLists visits;

    @Inject
    OrderChoices choices;

    @Inject
    OrderTyped typing;

    @Inject
    PartOrders orders;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance write(@PathParam("id") UUID id) {
        return page(
                found(id),
                UUID.randomUUID().toString(),
                Said.filled(Map.of(
                        "quantity",
                        "1",
                        "expected",
                        today.day().plusDays(USUAL_DAYS).toString())));
    }

    @POST
    public Response order(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    UUID operation = typed.id("operation");
                    UUID order = orders.order(operation, typing.read(id, typed)).id();
                    return SaidOnce.at("/" + slug + "/parts/orders/" + order, "part-ordered");
                },
                refusals -> page(
                        found(id),
                        String.valueOf(fields.getFirst("operation")),
                        Said.again(typed, refusals, frames.locale())));
    }

    private VisitLists.Row found(UUID id) {
        return visits.one(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(VisitLists.Row row, String operation, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        return Pages.neworder(
                frame,
                row.id(),
                row.homeId(),
                row.street() + ", " + row.city(),
                choices.parts(frame.locale()),
                choices.machines(row.homeId()),
                operation,
                form);
    }
}
