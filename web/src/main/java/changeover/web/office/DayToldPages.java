package changeover.web.office;

import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Typed;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.UUID;

/** The customers of a day were told their hours: one of them, or all in one press. */
@Path("/{slug}/season/{day}/told")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class DayToldPages {

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    HoursTold told;

    @Inject
    VisitLists lists;

    @Inject
    SeasonPages season;

    /** Field {@code visit} for one; without it for all. */
    @POST
    public Response tell(
            @PathParam("slug") String slug, @PathParam("day") String said, MultivaluedMap<String, String> fields) {
        LocalDate day = SaidDay.of(said);
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID visit = typed.idOrNone("visit");
                    typed.understood();
                    if (visit == null) {
                        told.tellAll(day);
                    } else {
                        var _ = lists.one(visit).orElseThrow(NotFoundException::new);
                        told.tell(visit);
                    }
                    return SaidOnce.at("/" + slug + "/season/" + day, "kept");
                },
                refusals -> season.day(day, Said.again(typed, refusals, frames.locale())));
    }
}
