package changeover.web.office;

import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.TechnicianBase;
import changeover.scheduling.dayplan.TechnicianBases;
import changeover.web.session.Desk;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Typed;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Where a technician's day begins, and the cards they hold. */
@Path("/{slug}/shop/people/{person}/crew")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class CrewPages {

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    CrewSheet sheet;

    @Inject
    People people;

    @Inject
    TechnicianBases bases;

    @POST
    @Path("base")
    public Response begin(
            @PathParam("slug") String slug, @PathParam("person") UUID person, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    if (sheet.member(person).role() != Role.TECHNICIAN) {
                        throw Refusal.of("base.technicians-only").thrown();
                    }
                    var facts = new TechnicianBase.Facts(
                            typed.text("address", 200),
                            typed.number("latitude", new BigDecimal(-90), new BigDecimal(90)),
                            typed.number("longitude", new BigDecimal(-180), new BigDecimal(180)),
                            typed.whole("lunch", 0, 120));
                    int version = typed.whole("version", -1, Integer.MAX_VALUE);
                    typed.understood();
                    bases.write(person, facts, new FilledOn(version));
                    return SaidOnce.at(roster(slug, person), "kept");
                },
                refusals -> {
                    CrewSheet.Forms written = sheet.written(person);
                    return sheet.page(
                            person,
                            new CrewSheet.Forms(
                                    written.hours(),
                                    Said.blank(),
                                    Said.again(typed, refusals, frames.locale()),
                                    Said.blank()));
                });
    }

    /** A new card of a kind takes the old one's place. */
    @POST
    @Path("tickets")
    @RolesAllowed("owner")
    public Response hold(
            @PathParam("slug") String slug, @PathParam("person") UUID person, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = sheet.member(person);
                    String kind = typed.oneOf("kind", TicketNeeded.KINDS);
                    String number = typed.line("number", 60);
                    @Nullable LocalDate expires = typed.dayOrNone("expires");
                    typed.understood();
                    people.hold(person, kind, number, expires);
                    return SaidOnce.at(roster(slug, person), "kept");
                },
                refusals -> {
                    CrewSheet.Forms written = sheet.written(person);
                    return sheet.page(
                            person,
                            new CrewSheet.Forms(
                                    written.hours(),
                                    Said.blank(),
                                    written.base(),
                                    Said.again(typed, refusals, frames.locale())));
                });
    }

    private static String roster(String slug, UUID person) {
        return "/" + slug + "/shop/people/" + person + "/roster";
    }
}
