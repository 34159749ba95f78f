package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.dayplan.change.CrewOrdered;
import changeover.scheduling.dayplan.change.CrewsDay;
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
import org.jspecify.annotations.Nullable;

/** A day to come laid over everybody who works then, kept on a person's yes. */
@Path("/{slug}/season/{day}/crew")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class CrewOrderPages {

    private static final int LONGEST = 60_000;

    public record Stop(UUID visit, String home, String hours, String was, boolean stays) {}

    public record Round(String name, String leaves, String back, String lunch, int road, List<Stop> stops) {}

    /**
     * @param open whether the day is to come
     * @param found whether a day was found that keeps every hour that stays
     * @param order what finds the same day again
     * @param crow whether roads are as the crow flies since the table of roads has not answered
     */
    public record View(
            boolean open,
            boolean found,
            boolean better,
            boolean plain,
            boolean crow,
            int road,
            int before,
            String order,
            List<Round> rounds) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance crewday(
                Frame frame, String title, LocalDate day, @Nullable View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    CurrentTenant current;

    @Inject
    CrewsDay crews;

    @Inject
    DayPlans plans;

    @Inject
    People people;

    /** The search holds no transaction. */
    @GET
    public TemplateInstance lay(@PathParam("day") String said) {
        LocalDate day = SaidDay.of(said);
        CrewsDay.Proposed proposed = crews.search(current.run(current.id(), current.person(), () -> crews.ask(day)));
        return current.run(current.id(), current.person(), () -> page(day, view(day, proposed), Said.blank()));
    }

    /** What was shown is reckoned anew; where the day is another by now, it is to be laid again first. */
    @POST
    public Response keep(
            @PathParam("slug") String slug, @PathParam("day") String said, MultivaluedMap<String, String> fields) {
        LocalDate day = SaidDay.of(said);
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String order = typed.text("order", LONGEST);
                    int shown = typed.whole("shown", 0, Integer.MAX_VALUE);
                    typed.understood();
                    crews.keep(day, order, shown);
                    return SaidOnce.at("/" + slug + "/season/" + day, "kept");
                },
                refusals -> page(day, null, Said.again(typed, refusals, frames.locale())));
    }

    /** @param view null where the day is to be laid again */
    private TemplateInstance page(LocalDate day, @Nullable View view, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        return Pages.crewday(frame, DayWords.of(frame.locale()).withWeekday(day), day, view, form);
    }

    private View view(LocalDate day, CrewsDay.Proposed proposed) {
        Map<UUID, String> names = people.all().stream()
                .collect(Collectors.toMap(Membership::personId, Membership::name, (one, _) -> one));
        Map<UUID, DayPlan.Stop> homes = plans.of(day).stream()
                .flatMap(plan -> plan.stops().stream())
                .collect(Collectors.toMap(DayPlan.Stop::visitId, Function.identity(), (one, _) -> one));
        CrewOrdered ordered = proposed.ordered().orElse(new CrewOrdered(List.of(), 0, false));
        return new View(
                crews.isOpen(day),
                proposed.ordered().isPresent(),
                proposed.isBetter(),
                ordered.plain(),
                proposed.roads() == Drives.By.CROW_FOR_TABLE,
                ordered.road(),
                proposed.before(),
                ordered.orders().text(),
                ordered.rounds().stream()
                        .filter(round -> !round.arrivals().isEmpty())
                        .map(round -> round(round, names, homes))
                        .toList());
    }

    private static Round round(CrewOrdered.Round round, Map<UUID, String> names, Map<UUID, DayPlan.Stop> homes) {
        Integer lunch = round.lunch();
        return new Round(
                names.getOrDefault(round.technician(), ""),
                DayOrderPages.hour(round.leaves()),
                DayOrderPages.hour(round.back()),
                lunch == null ? "" : DayOrderPages.hour(lunch),
                round.road(),
                round.arrivals().stream()
                        .map(one -> stop(one, round.technician(), names, homes))
                        .toList());
    }

    private static Stop stop(
            CrewOrdered.Arrival one, UUID technician, Map<UUID, String> names, Map<UUID, DayPlan.Stop> homes) {
        DayPlan.Stop home = homes.get(one.visit());
        boolean same = one.starts() == one.was() && one.whose().equals(technician);
        String was = DayOrderPages.hour(one.was());
        return new Stop(
                one.visit(),
                home == null ? "" : home.home(),
                DayOrderPages.hour(one.starts()) + " – " + DayOrderPages.hour(one.ends()),
                same ? "" : one.whose().equals(technician) ? was : was + ", " + names.getOrDefault(one.whose(), ""),
                one.stays());
    }
}
