package changeover.web.office;

import changeover.contracts.customers.HomesShut;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.change.FittingIn;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.dayplan.change.Insertions;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.visits.VisitLists;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One visit more in a day that is full: the three ways that disturb it least, one of them taken by form. */
@Path("/{slug}/visits/{id}/insertion")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class InsertionPages {

    public record Moved(String home, String from, String to) {}

    /**
     * @param shown tells this way from any other; it comes back with the yes
     * @param second who goes along; empty where one goes alone
     */
    public record Way(
            int shown,
            String name,
            String second,
            boolean onCall,
            String starts,
            String ends,
            int road,
            int later,
            List<Moved> moved) {

        /** Where its fields stand on the page. */
        public String spot() {
            return "way-" + shown;
        }
    }

    /**
     * @param told whether the customer was told the hour that the visit has, so that it moves for a reason only
     * @param crow whether roads are as the crow flies since the table of roads has not answered
     */
    public record View(
            UUID visit,
            String home,
            String day,
            boolean told,
            boolean crow,
            boolean two,
            List<Way> ways,
            boolean shut) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance insertion(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    VisitLists lists;

    @Inject
    FittingIn fitting;

    @Inject
    HoursTold told;

    @Inject
    DayPlans plans;

    @Inject
    People people;

    @Inject
    HomesShut shut;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance ways(@PathParam("id") UUID id, @Nullable @QueryParam("day") String said) {
        LocalDate day = said == null || said.isBlank() ? today.day() : SaidDay.of(said);
        return page(id, day, Said.filled(Map.of("day", day.toString())));
    }

    /** The ways are found anew; one that is no longer what was shown is shown again first. */
    @POST
    public Response take(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        LocalDate day = typed.day("day");
        return desk.answer(
                () -> {
                    int shown = typed.whole("shown", 0, Integer.MAX_VALUE);
                    Moving moving = MovingForm.of(typed);
                    typed.understood();
                    var _ = found(id);
                    fitting.take(id, day, shown, moving);
                    return SaidOnce.at("/" + slug + "/visits/" + id, "day-kept");
                },
                refusals -> page(
                        id,
                        typed.refusals().stream().anyMatch(one -> "day".equals(one.field())) ? today.day() : day,
                        Said.again(typed, refusals, frames.locale())));
    }

    private VisitLists.Row found(UUID id) {
        return lists.one(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(UUID id, LocalDate day, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        VisitLists.Row row = found(id);
        Map<UUID, String> names = people.all().stream()
                .collect(Collectors.toMap(Membership::personId, Membership::name, (one, _) -> one));
        Map<UUID, String> homes = plans.of(day).stream()
                .flatMap(plan -> plan.stops().stream())
                .collect(Collectors.toMap(DayPlan.Stop::visitId, DayPlan.Stop::home, (one, _) -> one));
        FittingIn.Ways ways = fitting.ways(id, day);
        return Pages.insertion(
                frame,
                new View(
                        id,
                        row.street() + ", " + row.city(),
                        frame.inWords(day),
                        told.isTold(id),
                        ways.roads() == Drives.By.CROW_FOR_TABLE,
                        ways.people() > 1,
                        ways.offers().stream()
                                .map(offer -> way(offer, names, homes))
                                .toList(),
                        shut.on(row.homeId(), day).isPresent()),
                form);
    }

    private static Way way(Insertions.Offer offer, Map<UUID, String> names, Map<UUID, String> homes) {
        return new Way(
                FittingIn.shown(offer),
                names.getOrDefault(offer.technician(), ""),
                offer.second().map(second -> names.getOrDefault(second, "")).orElse(""),
                offer.onCall(),
                DayOrderPages.hour(offer.starts()),
                DayOrderPages.hour(offer.ends()),
                Math.max(0, offer.road()),
                offer.later(),
                offer.moved().stream()
                        .map(one -> new Moved(
                                homes.getOrDefault(one.visit(), ""),
                                DayOrderPages.hour(one.from()),
                                DayOrderPages.hour(one.to())))
                        .toList());
    }
}
