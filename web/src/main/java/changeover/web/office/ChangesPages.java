package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** For the owner: what was changed in a home and by whom, and who saw its codes and why. */
@Path("/{slug}/homes")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class ChangesPages {

    /** Somebody saw the codes. */
    public record Seen(String when, String person, String reason) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance changes(Frame frame, Home home, ChangesView view, List<Seen> seen);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Homes homes;

    @Inject
    ChangesViews views;

    @Inject
    AccessCodes codes;

    @Inject
    People people;

    @Inject
    Businesses businesses;

    @GET
    @Path("{home}/changes")
    @Transactional
    public TemplateInstance changes(@PathParam("home") UUID id, @QueryParam("page") @DefaultValue("1") int page) {
        Home home = homes.get(id).orElseThrow(NotFoundException::new);
        Frame frame = frames.of(Tab.HOMES);
        ZoneId zone = businesses.current().zone();
        Map<UUID, String> names =
                people.all().stream().collect(Collectors.toMap(Membership::personId, Membership::name, (a, b) -> a));
        return Pages.changes(
                frame,
                home,
                views.record(Recorded.HOMES, id, "homes/" + id, RecordChangesPages.known(page), frame),
                codes.readings(id).stream()
                        .map(reading -> new Seen(
                                when(reading.at(), zone, frame.locale()),
                                names.getOrDefault(reading.personId(), ""),
                                reading.reason()))
                        .toList());
    }

    private static String when(Instant at, ZoneId zone, Locale locale) {
        ZonedDateTime here = at.atZone(zone);
        return DayWords.of(locale).briefWithYear(here.toLocalDate())
                + ", %d:%02d".formatted(here.getHour(), here.getMinute());
    }
}
