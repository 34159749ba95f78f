package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Roster;
import changeover.scheduling.dayplan.Rosters;
import changeover.scheduling.dayplan.change.DaysAway;
import changeover.web.session.Desk;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Typed;
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
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** When somebody works: one run of hours a weekday, and the days off; what the season's days are given by. */
@Path("/{slug}/shop/people/{person}/roster")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class RosterPages {

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    CrewSheet sheet;

    @Inject
    Rosters rosters;

    @Inject
    DaysAway away;

    @GET
    @Transactional
    public TemplateInstance read(@PathParam("person") UUID person) {
        var _ = sheet.member(person);
        return sheet.page(person, sheet.written(person));
    }

    @POST
    public Response write(
            @PathParam("slug") String slug, @PathParam("person") UUID person, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = sheet.member(person);
                    List<Roster.Hours> hours = hours(typed);
                    typed.understood();
                    if (hours.isEmpty()) {
                        throw Refusal.of("roster.no-hours").at("starts-1").thrown();
                    }
                    String seen = typed.line("seen", 400);
                    if (seen != null && !seen.equals(sheet.seen(person))) {
                        throw Refusal.of("changed-meanwhile").thrown();
                    }
                    rosters.write(person, hours);
                    return SaidOnce.at(path(slug, person), "kept");
                },
                refusals -> page(person, Said.again(typed, refusals, frames.locale()), Said.blank()));
    }

    @POST
    @Path("days")
    public Response takeOff(
            @PathParam("slug") String slug, @PathParam("person") UUID person, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = sheet.member(person);
                    LocalDate day = typed.day("day");
                    LocalDate said = typed.dayOrNone("last");
                    LocalDate last = said == null ? day : said;
                    String why = typed.text("why", 200);
                    if (typed.refusals().isEmpty() && last.isBefore(day)) {
                        typed.refuse(Refusal.of("visit.last-before-first").at("last"));
                    }
                    typed.understood();
                    away.takeOff(typed.ticked("closed") ? null : person, Window.ofDays(day, last), why);
                    return SaidOnce.at(path(slug, person), "kept");
                },
                refusals -> page(person, sheet.written(person).hours(), Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("days/{off}/removal")
    public Response work(
            @PathParam("slug") String slug,
            @PathParam("person") UUID person,
            @PathParam("off") UUID off,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = sheet.member(person);
                    LocalDate last = typed.dayOrNone("last");
                    typed.understood();
                    if (!away.workAfterAll(person, off, last)) {
                        throw new NotFoundException();
                    }
                    return SaidOnce.at(path(slug, person), "kept");
                },
                _ -> sheet.page(person, sheet.written(person)));
    }

    private static String path(String slug, UUID person) {
        return "/" + slug + "/shop/people/" + person + "/roster";
    }

    private static List<Roster.Hours> hours(Typed typed) {
        var hours = new ArrayList<Roster.Hours>();
        for (DayOfWeek weekday : DayOfWeek.values()) {
            String starts = "starts-" + weekday.getValue();
            String ends = "ends-" + weekday.getValue();
            boolean begun = typed.line(starts, 20) != null;
            boolean over = typed.line(ends, 20) != null;
            if (begun != over) {
                typed.refuse(Refusal.of("roster.both-hours").at(begun ? ends : starts));
            } else if (begun) {
                var run = new Roster.Hours(weekday, typed.time(starts), typed.time(ends));
                if (!run.starts().isBefore(run.ends()) && understood(typed, starts, ends)) {
                    typed.refuse(Refusal.of("roster.hours-last").at(ends));
                }
                hours.add(run);
            }
        }
        return hours;
    }

    private static boolean understood(Typed typed, String starts, String ends) {
        return typed.refusals().stream().noneMatch(one -> starts.equals(one.field()) || ends.equals(one.field()));
    }

    private TemplateInstance page(UUID person, Said hours, Said off) {
        return sheet.page(
                person, new CrewSheet.Forms(hours, off, sheet.written(person).base(), Said.blank()));
    }
}
