package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** A visit that no plan promised: somebody called, or one more is wanted. Its day is given on its own page. */
@Path("/{slug}/homes/{home}/visits")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class NewVisitPages {

    private static final int DAY_IN_MINUTES = 1440;

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance newvisit(Frame frame, Home home, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    Today today;

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance write(@PathParam("home") UUID id) {
        LocalDate day = today.day();
        return page(
                id,
                Said.filled(Map.of(
                        "kind",
                        "call",
                        "first",
                        day.toString(),
                        "last",
                        day.plusDays(7).toString(),
                        "minutes",
                        "60")));
    }

    @POST
    public Response make(
            @PathParam("slug") String slug, @PathParam("home") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    known(id);
                    String kind = typed.oneOf("kind", Set.of("call", "extra"));
                    LocalDate first = typed.day("first");
                    LocalDate last = typed.day("last");
                    int minutes = typed.whole("minutes", 5, DAY_IN_MINUTES);
                    String note = typed.text("note", 1000);
                    if (last.isBefore(first)) {
                        typed.refuse(Refusal.of("visit.last-before-first").at("last"));
                    }
                    typed.understood();
                    UUID visit = visits.make(new NewVisit(
                                    id,
                                    null,
                                    VisitKind.ofCode(kind),
                                    Window.ofDays(first, last),
                                    minutes,
                                    null,
                                    note,
                                    List.of()))
                            .id();
                    return SaidOnce.at("/" + slug + "/visits/" + visit, "kept");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(UUID id, Said form) {
        return Pages.newvisit(frames.of(Tab.HOMES), known(id), form);
    }

    private Home known(UUID id) {
        return homes.get(id).orElseThrow(NotFoundException::new);
    }
}
