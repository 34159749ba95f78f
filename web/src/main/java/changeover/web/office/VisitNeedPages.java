package changeover.web.office;

import changeover.contracts.words.FilledOn;
import changeover.scheduling.dayplan.Need;
import changeover.scheduling.dayplan.Needs;
import changeover.scheduling.dayplan.VisitNeed;
import changeover.scheduling.visits.VisitLists;
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
import java.util.UUID;

/** What one visit asks of whoever is sent, written by hand. */
@Path("/{slug}/visits/{id}/needs")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class VisitNeedPages {

    /** @param version the edition of what was written by hand; -1 while nothing is */
    public record View(UUID visit, String home, int version) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance visitneeds(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    VisitLists lists;

    @Inject
    Needs needs;

    @GET
    @Transactional
    public TemplateInstance read(@PathParam("id") UUID id) {
        return page(
                id,
                Said.filled(needs.byHand(id)
                        .map(need -> NeedForm.fields(need.need(), need.why()))
                        .orElseGet(() -> NeedForm.fields(Need.NOTHING, ""))));
    }

    @POST
    public Response write(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    Need need = NeedForm.read(typed, true);
                    String why = typed.text("why", 200);
                    int version = typed.whole("version", -1, Integer.MAX_VALUE);
                    typed.understood();
                    needs.write(id, need, why, new FilledOn(version));
                    return SaidOnce.at("/" + slug + "/visits/" + id, "kept");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(UUID id, Said form) {
        VisitLists.Row row = found(id);
        int version = needs.byHand(id).map(VisitNeed::version).orElse(-1);
        return Pages.visitneeds(frames.of(Tab.SEASON), new View(id, row.street() + ", " + row.city(), version), form);
    }

    private VisitLists.Row found(UUID id) {
        return lists.one(id).orElseThrow(NotFoundException::new);
    }
}
