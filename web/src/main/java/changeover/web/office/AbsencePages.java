package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.dayplan.change.Absences;
import changeover.web.session.Bundles;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** A technician is ill: their day is shared out or given back to the season, and whoever must hear of it is listed. */
@Path("/{slug}/season/{day}/absence/{person}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class AbsencePages {

    public record Line(
            UUID visit,
            String home,
            String was,
            boolean told,
            boolean along,
            String goesTo,
            String second,
            String hour) {}

    public record View(LocalDate day, String title, UUID person, String name, List<Line> lines) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance absence(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    People people;

    @Inject
    Absences absences;

    @Inject
    DayPlans plans;

    @GET
    @Transactional
    public TemplateInstance look(@PathParam("day") String day, @PathParam("person") UUID person) {
        return page(SaidDay.of(day), person, Said.blank());
    }

    @POST
    public Response share(
            @PathParam("slug") String slug,
            @PathParam("day") String said,
            @PathParam("person") UUID person,
            MultivaluedMap<String, String> fields) {
        LocalDate day = SaidDay.of(said);
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = member(person);
                    absences.share(
                            day,
                            person,
                            Bundles.of(ChangedWords.class, frames.locale()).why_ill());
                    return SaidOnce.at("/" + slug + "/season/rings", "kept");
                },
                refusals -> page(day, person, Said.again(typed, refusals, frames.locale())));
    }

    private Membership member(UUID person) {
        return people.of(person).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(LocalDate day, UUID person, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        Membership member = member(person);
        Map<UUID, String> names = people.all().stream()
                .collect(Collectors.toMap(Membership::personId, Membership::name, (one, _) -> one));
        Map<UUID, String> homes = plans.of(day).stream()
                .flatMap(plan -> plan.stops().stream())
                .collect(Collectors.toMap(DayPlan.Stop::visitId, DayPlan.Stop::home, (one, _) -> one));
        List<Line> lines = absences.shares(day, person).stream()
                .map(one -> new Line(
                        one.visit(),
                        homes.getOrDefault(one.visit(), ""),
                        DayOrderPages.hour(one.was()),
                        one.told(),
                        one.along(),
                        one.technician() == null ? "" : names.getOrDefault(one.technician(), ""),
                        one.second() == null ? "" : names.getOrDefault(one.second(), ""),
                        DayOrderPages.hour(one.starts())))
                .toList();
        String title = DayWords.of(frame.locale()).withWeekday(day);
        return Pages.absence(frame, new View(day, title, person, member.name(), lines), form);
    }
}
