package changeover.web.office;

import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.customers.HomesShut;
import changeover.contracts.customers.ShutTimes;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.VisitsShutOut;
import changeover.web.session.Bundles;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.ShutInWords;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** When a home is shut: heat off, water drained; which visits that leaves without a day. */
@Path("/{slug}/homes/{home}/shut")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ShutPages {

    public record Line(UUID id, String from, String words, boolean over, boolean opened) {}

    public record Trip(UUID visit, String when, String words) {}

    public record View(UUID home, String line, List<Line> times, List<Trip> booked, List<Trip> noDay) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance shut(Frame frame, View view, Said form, Said opening);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    HomesShut shut;

    @Inject
    VisitsShutOut visits;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance look(@PathParam("home") UUID home) {
        return page(home, Said.blank(), Said.blank());
    }

    @POST
    public Response add(
            @PathParam("slug") String slug, @PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = known(home);
                    LocalDate from = typed.day("from");
                    LocalDate until = typed.dayOrNone("until");
                    String note = typed.line("note", 500);
                    typed.understood();
                    shut.shut(
                            home,
                            new HomesShut.Facts(
                                    from, until, typed.ticked("heatOff"), typed.ticked("waterDrained"), note));
                    return SaidOnce.at("/" + slug + "/homes/" + home + "/shut", "kept");
                },
                refusals -> page(home, Said.again(typed, refusals, frames.locale()), Said.blank()));
    }

    @POST
    @Path("{shut}/opening")
    public Response open(
            @PathParam("slug") String slug,
            @PathParam("home") UUID home,
            @PathParam("shut") UUID time,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = known(home);
                    if (shut.of(home).stream().noneMatch(one -> one.id().equals(time))) {
                        throw new NotFoundException();
                    }
                    LocalDate day = typed.day("opens");
                    typed.understood();
                    shut.opens(home, time, day);
                    return SaidOnce.at("/" + slug + "/homes/" + home + "/shut", "kept");
                },
                refusals -> page(home, Said.blank(), Said.again(typed, refusals, frames.locale())));
    }

    private Home known(UUID home) {
        return homes.get(home).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(UUID id, Said form, Said opening) {
        Frame frame = frames.of(Tab.HOMES);
        Home home = known(id);
        LocalDate day = today.day();
        List<HomesShut.Shut> times = shut.of(id);
        var closed = new ShutTimes(times.stream()
                .map(one -> ShutTimes.time(one.from(), one.until()))
                .toList());
        ShutWords words = Bundles.of(ShutWords.class, frame.locale());
        return Pages.shut(
                frame,
                new View(
                        id,
                        home.line(),
                        times.stream()
                                .map(one -> new Line(
                                        one.id(),
                                        frame.brief(one.from()),
                                        ShutInWords.sentence(one, frame.locale()),
                                        one.isOver(day),
                                        one.opened()))
                                .toList(),
                        visits.booked(id, day).stream()
                                .map(one -> new Trip(
                                        one.visit(),
                                        frame.brief(one.day()) + ", " + one.starts(),
                                        one.technician() == null ? "" : one.technician()))
                                .toList(),
                        visits.withoutDay(id, closed, day).stream()
                                .map(one -> new Trip(
                                        one.visit(),
                                        frame.brief(one.window().last()),
                                        words.between(
                                                frame.brief(one.window().from()),
                                                frame.brief(one.window().last()))))
                                .toList()),
                form,
                opening.refused() ? opening : Said.filled(Map.of("opens", day.toString())));
    }
}
