package changeover.web.office;

import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.web.session.CalendarLink;
import changeover.web.session.CalendarLinks;
import changeover.web.session.CalendarOf;
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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** The office makes the link by which a household's calendar reads the home's visits, and takes links back. */
@Path("/{slug}/homes/{home}/calendar")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class HomeCalendarPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance homecalendar(
                Frame frame, Home home, List<CalendarLink> links, Said form, String made);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    CalendarLinks links;

    @GET
    @Transactional
    public TemplateInstance links(@PathParam("home") UUID id) {
        return page(known(id), Said.filled(Map.of("language", frames.locale().getLanguage())), "");
    }

    /** The whole address, in the answer to the post itself and nowhere else again. */
    @POST
    public Response make(
            @PathParam("slug") String slug,
            @PathParam("home") UUID id,
            @Context UriInfo address,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.show(
                () -> {
                    Home home = known(id);
                    String language = typed.oneOf("language", Set.of("en", "fr"));
                    typed.understood();
                    String secret = links.make(new CalendarOf.Household(id), language);
                    return page(home, Said.blank(), address.getBaseUri() + slug + "/calendars/" + secret);
                },
                refusals -> page(known(id), Said.again(typed, refusals, frames.locale()), ""));
    }

    @POST
    @Path("revocation")
    public Response revoke(@PathParam("slug") String slug, @PathParam("home") UUID id) {
        return desk.answer(
                () -> {
                    known(id);
                    links.revoke(new CalendarOf.Household(id));
                    return SaidOnce.at("/" + slug + "/homes/" + id + "/calendar", "kept");
                },
                _ -> page(known(id), Said.blank(), ""));
    }

    private TemplateInstance page(Home home, Said form, String made) {
        return Pages.homecalendar(
                frames.of(Tab.HOMES), home, links.open(new CalendarOf.Household(home.id())), form, made);
    }

    private Home known(UUID id) {
        return homes.get(id).orElseThrow(NotFoundException::new);
    }
}
