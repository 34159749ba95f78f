package changeover.web.field;

import changeover.contracts.tenants.CurrentTenant;
import changeover.web.session.CalendarLink;
import changeover.web.session.CalendarLinks;
import changeover.web.session.CalendarOf;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.SaidOnce;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;

/** A technician takes their own visits into a calendar of theirs, and takes the link back when the telephone is lost. */
@Path("/{slug}/field/calendar")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class OwnCalendarPages {

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance owncalendar(Frame frame, List<CalendarLink> links, String made);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    CurrentTenant current;

    @Inject
    CalendarLinks links;

    @GET
    @Transactional
    public TemplateInstance links() {
        return page("");
    }

    /** The whole address, in the answer to the post itself and nowhere else again. */
    @POST
    public Response make(@PathParam("slug") String slug, @Context UriInfo address) {
        return desk.show(
                () -> page(address.getBaseUri() + slug + "/calendars/"
                        + links.make(own(), frames.locale().getLanguage())),
                _ -> page(""));
    }

    @POST
    @Path("revocation")
    public Response revoke(@PathParam("slug") String slug) {
        return desk.answer(
                () -> {
                    links.revoke(own());
                    return SaidOnce.at("/" + slug + "/field/calendar", "kept");
                },
                _ -> page(""));
    }

    private TemplateInstance page(String made) {
        return Pages.owncalendar(frames.of(null), links.open(own()), made);
    }

    private CalendarOf own() {
        return new CalendarOf.Technician(current.person());
    }
}
