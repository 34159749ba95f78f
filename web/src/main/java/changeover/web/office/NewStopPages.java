package changeover.web.office;

import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.stopped.MachineStops;
import changeover.scheduling.stopped.NewStop;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderChoices;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.StopTyped;
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
import java.util.UUID;

/** The office stops a machine that somebody told of by telephone. */
@Path("/{slug}/homes/{home}/stopped")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class NewStopPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance newstop(
                Frame frame, UUID homeId, String home, List<OrderChoices.Choice> machines, String made, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    OrderChoices choices;

    @Inject
    MachineStops stops;

    @Inject
    StopTyped typing;

    @Inject
    CurrentTenant current;

    @GET
    @Transactional
    public TemplateInstance write(@PathParam("home") UUID home) {
        return page(found(home), UUID.randomUUID().toString(), Said.blank());
    }

    @POST
    public Response stop(
            @PathParam("slug") String slug, @PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(home);
                    UUID made = typed.id("made");
                    NewStop facts = typing.stop(home, null, typed, frames.locale());
                    UUID stop = stops.stop(made, facts, current.person()).id();
                    return SaidOnce.at("/" + slug + "/stopped/" + stop, "stopped");
                },
                refusals -> page(
                        found(home),
                        String.valueOf(fields.getFirst("made")),
                        Said.again(typed, refusals, frames.locale())));
    }

    private Home found(UUID home) {
        return homes.get(home).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Home home, String made, Said form) {
        return Pages.newstop(frames.of(Tab.HOMES), home.id(), home.line(), choices.machines(home.id()), made, form);
    }
}
