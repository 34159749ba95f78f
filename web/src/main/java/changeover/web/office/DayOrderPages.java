package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.change.DayChanges;
import changeover.scheduling.dayplan.change.DaysHeld;
import changeover.scheduling.dayplan.change.HeldDay;
import changeover.scheduling.dayplan.change.Ordered;
import changeover.scheduling.dayplan.routes.InsertedRoutes;
import changeover.scheduling.dayplan.routes.Routes;
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
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Each technician's day in the order with the least road, kept on a person's yes. */
@Path("/{slug}/season/{day}/order")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class DayOrderPages {

    /** Few homes: a quarter of a second finds the shortest road between them. */
    private static final Routes ROUTES = new InsertedRoutes(Duration.ofMillis(250));

    public record Stop(UUID visit, String home, String hours, int road, String was, boolean stays) {}

    /**
     * A technician's day.
     *
     * @param found whether an order was found that keeps every hour that stays
     * @param better whether any hour would change by it
     * @param shown tells this order from any other; it comes back with the yes
     */
    public record Round(
            UUID technician,
            String name,
            boolean found,
            boolean better,
            int shown,
            int road,
            int before,
            String leaves,
            String back,
            String lunch,
            List<Stop> stops) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance dayorder(
                Frame frame, String title, LocalDate day, List<Round> rounds, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    DaysHeld held;

    @Inject
    DayPlans plans;

    @Inject
    DayChanges changes;

    @Inject
    People people;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance order(@PathParam("day") String day) {
        return page(SaidDay.of(day), Said.blank());
    }

    /** The order is found anew; where it is no longer what was shown, it is shown again first. */
    @POST
    public Response keep(
            @PathParam("slug") String slug, @PathParam("day") String said, MultivaluedMap<String, String> fields) {
        LocalDate day = SaidDay.of(said);
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID technician = typed.id("technician");
                    int shown = typed.whole("shown", 0, Integer.MAX_VALUE);
                    typed.understood();
                    DaysHeld.Held all = held.on(day, SaidDay.begun(day, today));
                    Ordered ordered = all.of(technician)
                            .flatMap(one -> Ordered.of(one, all.roads(), ROUTES))
                            .orElseThrow(() -> Refusal.of("day-order.changed").thrown());
                    if (shown(ordered) != shown) {
                        throw Refusal.of("day-order.changed").thrown();
                    }
                    changes.move(
                            day,
                            ordered.arrivals().stream()
                                    .filter(one -> !one.stays() && one.starts() != one.was())
                                    .map(one -> new DayChanges.Move(
                                            one.visit(),
                                            technician,
                                            Minutes.time(one.starts()),
                                            Minutes.time(one.ends())))
                                    .toList());
                    return SaidOnce.at("/" + slug + "/season/" + day, "kept");
                },
                refusals -> page(day, Said.again(typed, refusals, frames.locale())));
    }

    private static int shown(Ordered ordered) {
        return ordered.arrivals().stream()
                        .map(one -> one.visit() + " " + one.starts())
                        .toList()
                        .hashCode()
                & Integer.MAX_VALUE;
    }

    private TemplateInstance page(LocalDate day, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        DaysHeld.Held all = held.on(day, SaidDay.begun(day, today));
        Map<UUID, String> names = people.all().stream()
                .collect(Collectors.toMap(Membership::personId, Membership::name, (one, _) -> one));
        Map<UUID, DayPlan.Stop> homes = plans.of(day).stream()
                .flatMap(plan -> plan.stops().stream())
                .collect(Collectors.toMap(DayPlan.Stop::visitId, Function.identity(), (one, _) -> one));
        List<Round> rounds = all.days().stream()
                .filter(one -> !one.held().isEmpty())
                .map(one -> round(one, all, names.getOrDefault(one.technician(), ""), homes))
                .toList();
        return Pages.dayorder(frame, DayWords.of(frame.locale()).withWeekday(day), day, rounds, form);
    }

    private static Round round(HeldDay day, DaysHeld.Held all, String name, Map<UUID, DayPlan.Stop> homes) {
        Optional<Ordered> found = Ordered.of(day, all.roads(), ROUTES);
        Ordered ordered = found.orElse(new Ordered(List.of(), null, 0, 0, 0));
        Integer lunch = ordered.lunch();
        return new Round(
                day.technician(),
                name,
                found.isPresent(),
                ordered.arrivals().stream().anyMatch(one -> !one.stays() && one.starts() != one.was()),
                shown(ordered),
                ordered.road(),
                day.road(all.roads()),
                hour(ordered.leaves()),
                hour(ordered.back()),
                lunch == null ? "" : hour(lunch),
                ordered.arrivals().stream().map(one -> stop(one, homes)).toList());
    }

    private static Stop stop(Ordered.Arrival one, Map<UUID, DayPlan.Stop> homes) {
        DayPlan.Stop home = homes.get(one.visit());
        return new Stop(
                one.visit(),
                home == null ? "" : home.home(),
                hour(one.starts()) + " – " + hour(one.ends()),
                one.road(),
                one.starts() == one.was() ? "" : hour(one.was()),
                one.stays());
    }

    static String hour(int minute) {
        return Minutes.time(minute).toString();
    }
}
