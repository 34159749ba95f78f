package changeover.web.portal;

import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.digests.Sha256;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Locales;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.CalendarEntries;
import changeover.scheduling.dayplan.CalendarEntry;
import changeover.web.session.CalendarLink;
import changeover.web.session.CalendarLinks;
import changeover.web.session.CalendarOf;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A technician's or a home's visits for whoever holds the link, in the form that calendars subscribe to. No key, no code and no
 * telephone number of a household stands in it.
 */
@Path("/{slug}/calendars/{secret}")
@RolesAllowed("customer")
public class CalendarPages {

    /** So long a past visit stays, and so long a calendar is told that one fell away. */
    private static final Period PAST = Period.ofDays(60);

    @Inject
    CalendarLinks links;

    @Inject
    CalendarEntries entries;

    @Inject
    CalendarInWords words;

    @Inject
    People people;

    @Inject
    Homes homes;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Transactional
    @Produces("text/calendar")
    public Response read(
            @PathParam("slug") String slug,
            @PathParam("secret") String secret,
            @HeaderParam("If-None-Match") @Nullable String known,
            @Context UriInfo address) {
        CalendarLink link = links.find(secret).orElseThrow(NotFoundException::new);
        URI base = address.getBaseUri().resolve(slug + "/");
        byte[] file = file(link, base, today.day().minus(PAST));
        String tag = Sha256.hex(file);
        boolean same = known != null && known.contains('"' + tag + '"');
        return (same ? Response.notModified() : Response.ok(file, "text/calendar;charset=utf-8"))
                .tag(new EntityTag(tag))
                .header("Content-Disposition", "inline; filename=\"visits.ics\"")
                .header("Cache-Control", "private, no-cache")
                .build();
    }

    private byte[] file(CalendarLink link, URI base, LocalDate from) {
        Business business = businesses.current();
        Locale locale = Locales.of(link.language());
        return switch (link.whose()) {
            case CalendarOf.Technician(var person) -> {
                Membership member = people.of(person)
                        .filter(one -> one.worksOn(today.day()))
                        .orElseThrow(NotFoundException::new);
                String name = words.of(locale).visits_of(member.name(), business.name());
                yield of(
                        name,
                        business,
                        entries.ofTechnician(person, from),
                        one -> words.forTechnician(one, locale, base));
            }
            case CalendarOf.Household(var id) -> {
                Home home = homes.get(id).orElseThrow(NotFoundException::new);
                String name = words.of(locale).visits_at(home.line(), business.name());
                String phone = businesses.profile().facts().phone();
                yield of(
                        name,
                        business,
                        entries.ofHome(id, from),
                        one -> words.forHousehold(one, locale, business.name(), phone));
            }
        };
    }

    private static byte[] of(
            String name,
            Business business,
            List<CalendarEntry> told,
            Function<CalendarEntry, CalendarFile.Entry> entry) {
        return CalendarFile.of(name, business.zone(), told.stream().map(entry).toList());
    }
}
