package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Roster;
import changeover.scheduling.dayplan.Rosters;
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
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** When somebody works: one run of hours a weekday, and the days off; what the season's days are given by. */
@Path("/{slug}/shop/people/{person}/roster")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class RosterPages {

    private static final int AHEAD_YEARS = 2;

    /** A weekday with the names of its two fields. */
    public record Weekday(String words, String starts, String ends) {}

    public record Off(UUID id, String day, String why, boolean whole) {}

    /**
     * @param usual whether the usual hours hold, since none were written
     * @param seen the hours as they stand, which a form must name to change them
     */
    public record View(UUID person, String name, boolean usual, String seen, List<Weekday> week, List<Off> off) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance roster(Frame frame, View view, Said hours, Said off);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    People people;

    @Inject
    Rosters rosters;

    @GET
    @Transactional
    public TemplateInstance read(@PathParam("person") UUID person) {
        member(person);
        return page(person, written(person), Said.blank());
    }

    @POST
    public Response write(
            @PathParam("slug") String slug, @PathParam("person") UUID person, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    member(person);
                    List<Roster.Hours> hours = hours(typed);
                    typed.understood();
                    if (hours.isEmpty()) {
                        throw Refusal.of("roster.no-hours").at("starts-1").thrown();
                    }
                    String seen = typed.line("seen", 400);
                    if (seen != null && !seen.equals(seen(person))) {
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
                    member(person);
                    LocalDate day = typed.day("day");
                    String why = typed.text("why", 200);
                    typed.understood();
                    rosters.takeOff(typed.ticked("closed") ? null : person, day, why);
                    return SaidOnce.at(path(slug, person), "kept");
                },
                refusals -> page(person, written(person), Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("days/{off}/removal")
    public Response work(@PathParam("slug") String slug, @PathParam("person") UUID person, @PathParam("off") UUID off) {
        return desk.answer(
                () -> {
                    member(person);
                    if (!rosters.workAfterAll(person, off)) {
                        throw new NotFoundException();
                    }
                    return SaidOnce.at(path(slug, person), "kept");
                },
                _ -> page(person, written(person), Said.blank()));
    }

    private static String path(String slug, UUID person) {
        return "/" + slug + "/shop/people/" + person + "/roster";
    }

    private Membership member(UUID person) {
        return people.all().stream()
                .filter(one -> one.personId().equals(person))
                .findFirst()
                .orElseThrow(NotFoundException::new);
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

    private String seen(UUID person) {
        return rosters.hoursOf(person).stream()
                .map(one -> one.weekday().getValue() + " " + one.starts() + "-" + one.ends())
                .collect(Collectors.joining(", "));
    }

    private Said written(UUID person) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (Roster.Hours one : rosters.hoursOf(person)) {
            fields.put("starts-" + one.weekday().getValue(), one.starts().toString());
            fields.put("ends-" + one.weekday().getValue(), one.ends().toString());
        }
        return Said.filled(fields);
    }

    private TemplateInstance page(UUID person, Said hours, Said off) {
        Frame frame = frames.of(Tab.SHOP);
        var coming = new Window(frame.today(), frame.today().plusYears(AHEAD_YEARS));
        return Pages.roster(
                frame,
                new View(
                        person,
                        member(person).name(),
                        !rosters.hasOwn(person),
                        seen(person),
                        Stream.of(DayOfWeek.values())
                                .map(day -> weekday(day, frame.locale()))
                                .toList(),
                        rosters.daysOff(coming).stream()
                                .filter(day ->
                                        day.personId().map(person::equals).orElse(true))
                                .map(day -> new Off(
                                        day.id(),
                                        frame.inWords(day.day()),
                                        day.why(),
                                        day.personId().isEmpty()))
                                .toList()),
                hours,
                off);
    }

    private static Weekday weekday(DayOfWeek day, Locale locale) {
        String words = day.getDisplayName(TextStyle.FULL, locale);
        return new Weekday(
                words.substring(0, 1).toUpperCase(locale) + words.substring(1),
                "starts-" + day.getValue(),
                "ends-" + day.getValue());
    }
}
