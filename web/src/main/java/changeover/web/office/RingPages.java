package changeover.web.office;

import changeover.scheduling.dayplan.change.Rings;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
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
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;

/** The customers who must hear that their visit is not as it was. */
@Path("/{slug}/season/rings")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class RingPages {

    public record Line(
            UUID id,
            UUID visit,
            String home,
            String customer,
            String phone,
            String wasDay,
            String wasHour,
            String wasName,
            boolean told,
            String day,
            String hour,
            String name) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance rings(Frame frame, List<Line> lines);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Rings rings;

    @GET
    @Transactional
    public TemplateInstance list() {
        Frame frame = frames.of(Tab.SEASON);
        return Pages.rings(
                frame, rings.open().stream().map(one -> line(one, frame)).toList());
    }

    @POST
    @Path("{ring}/call")
    public Response rung(@PathParam("slug") String slug, @PathParam("ring") UUID ring) {
        return desk.answer(
                () -> {
                    if (!rings.rung(ring)) {
                        throw new NotFoundException();
                    }
                    return SaidOnce.at("/" + slug + "/season/rings", "kept");
                },
                _ -> list());
    }

    private static Line line(Rings.Ring ring, Frame frame) {
        LocalDate day = ring.day();
        LocalTime starts = ring.starts();
        return new Line(
                ring.id(),
                ring.visit(),
                ring.home(),
                ring.customer() == null ? "" : ring.customer(),
                ring.phone() == null ? "" : ring.phone(),
                frame.brief(ring.wasDay()),
                ring.wasStarts().toString(),
                ring.wasTechnician() == null ? "" : ring.wasTechnician(),
                ring.told(),
                day == null ? "" : frame.brief(day),
                starts == null ? "" : starts.toString(),
                ring.technician() == null ? "" : ring.technician());
    }
}
