package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.scheduling.calls.AnswerHours;
import changeover.scheduling.calls.AnswerTimes;
import changeover.scheduling.calls.OnCalls;
import changeover.scheduling.calls.Urgency;
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
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** Who is on call by day, and within how many hours a caller is promised an answer. */
@Path("/{slug}/shop/on-call")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class OnCallPages {

    /** How far ahead turns are shown. */
    private static final int AHEAD_YEARS = 2;

    public record Turn(UUID id, String first, String last, String name) {}

    public record Person(UUID id, String name) {}

    /** An urgency with the names of its two fields. */
    public record Hours(String words, String planned, String none) {}

    public record View(List<Turn> turns, List<Person> people, List<Hours> hours) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance oncall(Frame frame, View view, Said turn, Said hours);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OnCalls onCalls;

    @Inject
    AnswerTimes times;

    @Inject
    People people;

    @GET
    @Transactional
    public TemplateInstance read() {
        Frame frame = frames.of(Tab.SHOP);
        return page(frame, Said.filled(Map.of("from", frame.today().toString())), written());
    }

    @POST
    public Response give(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID person = typed.id("person");
                    LocalDate first = typed.day("from");
                    LocalDate last = typed.day("last");
                    if (last.isBefore(first)) {
                        typed.refuse(Refusal.of("visit.last-before-first").at("last"));
                    }
                    typed.understood();
                    var _ = onCalls.give(person, Window.ofDays(first, last));
                    return SaidOnce.at(path(slug), "kept");
                },
                refusals -> page(frames.of(Tab.SHOP), Said.again(typed, refusals, frames.locale()), written()));
    }

    @POST
    @Path("{turn}/removal")
    public Response takeAway(@PathParam("slug") String slug, @PathParam("turn") UUID turn) {
        return desk.answer(
                () -> {
                    if (!onCalls.takeAway(turn)) {
                        throw new NotFoundException();
                    }
                    return SaidOnce.at(path(slug), "kept");
                },
                _ -> page(frames.of(Tab.SHOP), Said.blank(), written()));
    }

    @POST
    @Path("answer-times")
    @RolesAllowed("owner")
    public Response write(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Map<AnswerHours.Asked, Integer> hours = new HashMap<>();
                    for (AnswerHours.Asked asked : asked()) {
                        hours.put(asked, typed.whole(asked.code(), 1, AnswerHours.MOST));
                    }
                    typed.understood();
                    times.write(hours);
                    return SaidOnce.at(path(slug), "kept");
                },
                refusals -> page(frames.of(Tab.SHOP), Said.blank(), Said.again(typed, refusals, frames.locale())));
    }

    private static String path(String slug) {
        return "/" + slug + "/shop/on-call";
    }

    private static List<AnswerHours.Asked> asked() {
        return Arrays.stream(Urgency.values())
                .flatMap(urgency ->
                        List.of(true, false).stream().map(planned -> new AnswerHours.Asked(urgency, planned)))
                .toList();
    }

    private Said written() {
        AnswerHours hours = times.hours();
        var fields = new LinkedHashMap<String, String>();
        asked().forEach(asked -> fields.put(asked.code(), String.valueOf(hours.of(asked.urgency(), asked.withPlan()))));
        return Said.filled(fields);
    }

    private TemplateInstance page(Frame frame, Said turn, Said hours) {
        var coming = new Window(frame.today(), frame.today().plusYears(AHEAD_YEARS));
        List<Membership> all = people.all();
        Map<UUID, String> names = all.stream().collect(Collectors.toMap(Membership::personId, Membership::name));
        return Pages.oncall(
                frame,
                new View(
                        onCalls.in(coming).stream()
                                .map(one -> new Turn(
                                        one.id(),
                                        frame.brief(one.days().from()),
                                        frame.brief(one.days().last()),
                                        names.getOrDefault(one.personId(), "")))
                                .toList(),
                        all.stream()
                                .filter(member -> member.worksOn(frame.today()))
                                .map(member -> new Person(member.personId(), member.name()))
                                .toList(),
                        Arrays.stream(Urgency.values())
                                .map(urgency -> new Hours(
                                        urgency.wording().in(frame.locale()),
                                        new AnswerHours.Asked(urgency, true).code(),
                                        new AnswerHours.Asked(urgency, false).code()))
                                .toList()),
                turn,
                hours);
    }
}
