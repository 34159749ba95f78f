package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.change.DaysInOrder;
import changeover.scheduling.dayplan.change.Ordered;
import changeover.scheduling.dayplan.routes.Drives;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Each technician's day in the order with the least road, kept on a person's yes. */
@Path("/{slug}/season/{day}/order")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class DayOrderPages {

    public record Stop(UUID visit, String home, String hours, int road, String was, boolean stays) {}

    /**
     * A technician's day.
     *
     * @param found whether an order was found that keeps every hour that stays
     * @param better whether any hour would change by it
     * @param crow whether roads are as the crow flies since the table of roads has not answered
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
            boolean crow,
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
    DaysInOrder orders;

    @Inject
    DayPlans plans;

    @Inject
    People people;

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
                    orders.keep(day, technician, shown);
                    return SaidOnce.at("/" + slug + "/season/" + day, "kept");
                },
                refusals -> page(day, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(LocalDate day, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        Map<UUID, String> names = people.all().stream()
                .collect(Collectors.toMap(Membership::personId, Membership::name, (one, _) -> one));
        Map<UUID, DayPlan.Stop> homes = plans.of(day).stream()
                .flatMap(plan -> plan.stops().stream())
                .collect(Collectors.toMap(DayPlan.Stop::visitId, Function.identity(), (one, _) -> one));
        List<Round> rounds = orders.on(day).stream()
                .map(one -> round(one, names.getOrDefault(one.day().technician(), ""), homes))
                .toList();
        return Pages.dayorder(frame, DayWords.of(frame.locale()).withWeekday(day), day, rounds, form);
    }

    private static Round round(DaysInOrder.Proposed one, String name, Map<UUID, DayPlan.Stop> homes) {
        Ordered ordered = one.ordered().orElse(new Ordered(List.of(), null, 0, 0, 0));
        Integer lunch = ordered.lunch();
        return new Round(
                one.day().technician(),
                name,
                one.ordered().isPresent(),
                one.isBetter(),
                one.shown(),
                ordered.road(),
                one.before(),
                hour(ordered.leaves()),
                hour(ordered.back()),
                lunch == null ? "" : hour(lunch),
                one.roads() == Drives.By.CROW_FOR_TABLE,
                ordered.arrivals().stream().map(arrival -> stop(arrival, homes)).toList());
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
