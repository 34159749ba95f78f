package changeover.web.office;

import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.SaidOnce;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;

/** The customer was told the hour that a visit has: from then on no plan moves it. */
@Path("/{slug}/visits/{id}/told")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ToldPages {

    @Inject
    Desk desk;

    @Inject
    VisitLists lists;

    @Inject
    HoursTold told;

    @Inject
    VisitPages visit;

    @POST
    public Response tell(@PathParam("slug") String slug, @PathParam("id") UUID id) {
        return desk.answer(
                () -> {
                    var _ = lists.one(id).orElseThrow(NotFoundException::new);
                    told.tell(id);
                    return SaidOnce.at("/" + slug + "/visits/" + id, "kept");
                },
                _ -> visit.visit(id));
    }
}
