package changeover.web.office;

import changeover.contracts.tenants.Today;
import changeover.scheduling.returns.NewReturnVisit;
import changeover.scheduling.returns.ReturnCause;
import changeover.scheduling.returns.ReturnVisits;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderChoices;
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
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** We go back without charge to what a visit did, and say why. */
@Path("/{slug}/visits/{id}/returns")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ReturnVisitPages {

    private static final int DAY_IN_MINUTES = 1440;
    private static final int USUAL_DAYS = 7;

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance newreturn(
                Frame frame,
                UUID visit,
                UUID homeId,
                String home,
                List<OrderChoices.Choice> causes,
                List<OrderChoices.Choice> parts,
                List<OrderChoices.Choice> machines,
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
    ReturnVisits returns;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance write(@PathParam("id") UUID id) {
        return page(
                found(id),
                Said.filled(Map.of(
                        "minutes",
                        "60",
                        "last",
                        today.day().plusDays(USUAL_DAYS).toString())));
    }

    @POST
    public Response make(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    var facts = new NewReturnVisit(
                            id,
                            ReturnCause.of(typed.oneOf("cause", ReturnCause.codes())),
                            typed.line("part", 60),
                            typed.idOrNone("equipment"),
                            typed.text("words", 1000),
                            typed.whole("minutes", 5, DAY_IN_MINUTES),
                            typed.day("last"));
                    typed.understood();
                    return SaidOnce.at("/" + slug + "/visits/" + returns.make(facts), "return-visit");
                },
                refusals -> page(found(id), Said.again(typed, refusals, frames.locale())));
    }

    private VisitLists.Row found(UUID id) {
        return visits.one(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(VisitLists.Row row, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        return Pages.newreturn(
                frame,
                row.id(),
                row.homeId(),
                row.street() + ", " + row.city(),
                Arrays.stream(ReturnCause.values())
                        .map(cause -> new OrderChoices.Choice(
                                cause.code(), cause.wording().in(frame.locale())))
                        .toList(),
                choices.used(row.id(), frame.locale()),
                choices.machines(row.homeId()),
                form);
    }
}
