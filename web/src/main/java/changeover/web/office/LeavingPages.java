package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.scheduling.calls.OnCalls;
import changeover.scheduling.dayplan.change.Leaving;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.stock.VansLeft;
import changeover.web.session.Bundles;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Written;
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
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Somebody leaves: the last day, the visits after it, turns on call, the van; what is left to do stands on one page. */
@Path("/{slug}/shop/people/{person}/leaving")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class LeavingPages {

    private static final BigDecimal MOST = BigDecimal.valueOf(9999);
    private static final int YEARS = 2;

    public record Trip(UUID visit, String when, String home, boolean told, boolean along) {}

    public record Turn(String first, String last) {}

    /** @param field the name of the field in which it is counted */
    public record Lying(String field, String label, String quantity) {}

    public record Place(UUID id, String name) {}

    /** @param last empty while no last day is written */
    public record View(
            UUID person,
            String name,
            String last,
            boolean over,
            List<Trip> trips,
            List<Turn> turns,
            @Nullable String van,
            List<Lying> lying,
            List<Place> places,
            int toDo) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance leaving(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    People people;

    @Inject
    Leaving leaving;

    @Inject
    VansLeft vans;

    @Inject
    StockPlaces places;

    @Inject
    Parts parts;

    @Inject
    OnCalls turns;

    @Inject
    CurrentTenant current;

    @GET
    @Transactional
    public TemplateInstance look(@PathParam("person") UUID person) {
        return page(person, Said.blank());
    }

    @POST
    @Path("day")
    public Response day(
            @PathParam("slug") String slug, @PathParam("person") UUID person, MultivaluedMap<String, String> fields) {
        return done(slug, person, fields, typed -> {
            LocalDate day = typed.day("day");
            typed.understood();
            if (person.equals(current.person())) {
                throw Refusal.of("people.not-yourself").at("day").thrown();
            }
            member(person).end(day);
        });
    }

    @POST
    @Path("visits")
    public Response visits(
            @PathParam("slug") String slug, @PathParam("person") UUID person, MultivaluedMap<String, String> fields) {
        return done(slug, person, fields, _ -> {
            Membership member = member(person);
            leaving.handOver(
                    person,
                    last(member),
                    Bundles.of(LeavingWords.class, frames.locale()).why(member.name()));
        });
    }

    @POST
    @Path("van")
    public Response van(
            @PathParam("slug") String slug, @PathParam("person") UUID person, MultivaluedMap<String, String> fields) {
        return done(slug, person, fields, typed -> {
            Membership member = member(person);
            StockPlace van = vans.van(person)
                    .orElseThrow(() -> Refusal.of("leaving.no-van").thrown());
            UUID to = typed.id("to");
            List<VansLeft.Lying> counted = vans.lying(van.id()).stream()
                    .map(one ->
                            new VansLeft.Lying(one.part(), typed.number("part-" + one.part(), BigDecimal.ZERO, MOST)))
                    .toList();
            typed.understood();
            vans.empty(
                    person,
                    to,
                    counted,
                    Bundles.of(LeavingWords.class, frames.locale()).why(member.name()));
        });
    }

    private Response done(String slug, UUID person, MultivaluedMap<String, String> fields, Consumer<Typed> deed) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = member(person);
                    deed.accept(typed);
                    return SaidOnce.at("/" + slug + "/shop/people/" + person + "/leaving", "kept");
                },
                refusals -> page(person, Said.again(typed, refusals, frames.locale())));
    }

    private static LocalDate last(Membership member) {
        return member.untilDay()
                .orElseThrow(
                        () -> Refusal.of("leaving.last-day-first").at("day").thrown());
    }

    private Membership member(UUID person) {
        return people.of(person).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(UUID person, Said form) {
        Frame frame = frames.of(Tab.SHOP);
        Membership member = member(person);
        LocalDate last = member.untilDay().orElse(null);
        List<Trip> trips = last == null
                ? List.of()
                : leaving.left(person, last).stream()
                        .map(one -> new Trip(
                                one.visit(),
                                frame.brief(one.day()) + ", " + one.starts(),
                                one.home(),
                                one.told(),
                                one.along()))
                        .toList();
        List<Turn> onCall = last == null
                ? List.of()
                : turns.in(new Window(last.plusDays(1), last.plusYears(YEARS))).stream()
                        .filter(turn -> turn.personId().equals(person))
                        .map(turn -> new Turn(
                                frame.brief(turn.days().from()),
                                frame.brief(turn.days().last())))
                        .toList();
        StockPlace van = vans.van(person).orElse(null);
        List<Lying> lying = van == null
                ? List.of()
                : vans.lying(van.id()).stream().map(one -> lying(one, frame)).toList();
        return Pages.leaving(
                frame,
                new View(
                        person,
                        member.name(),
                        last == null ? "" : frame.inWords(last),
                        last != null && last.isBefore(frame.today()),
                        trips,
                        onCall,
                        van == null ? null : van.name(),
                        lying,
                        places.all().stream()
                                .filter(place -> van == null || !place.id().equals(van.id()))
                                .map(place -> new Place(place.id(), place.name()))
                                .toList(),
                        (last == null ? 1 : 0) + trips.size() + onCall.size() + (van == null ? 0 : 1)),
                form);
    }

    private Lying lying(VansLeft.Lying one, Frame frame) {
        String name = parts.find(one.part())
                .map(part -> part.name().in(frame.locale()) + (part.size() == null ? "" : " " + part.size()))
                .orElse(one.part());
        String quantity = Written.of(one.quantity(), frame.locale());
        return new Lying(
                "part-" + one.part(),
                Bundles.of(LeavingWords.class, frame.locale()).should(name, quantity),
                quantity);
    }
}
