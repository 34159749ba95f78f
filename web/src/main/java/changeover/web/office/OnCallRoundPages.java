package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.scheduling.calls.OnCallRound;
import changeover.scheduling.calls.OnCallRounds;
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
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;

/** On call in turns, by the week or by the day: who begins and who follows. */
@Path("/{slug}/shop/on-call-rounds")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class OnCallRoundPages {

    private static final int MOST = 8;
    private static final int WEEKS = 12;
    private static final List<String> NAMES =
            IntStream.rangeClosed(1, MOST).mapToObj(place -> "order" + place).toList();

    public record Person(String id, String name) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance oncallround(Frame frame, List<Person> people, List<String> names, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OnCallRounds rounds;

    @Inject
    People people;

    /** Who was on call the longest ago begins. */
    @GET
    @Transactional
    public TemplateInstance read() {
        Frame frame = frames.of(Tab.SHOP);
        LocalDate monday = frame.today().with(TemporalAdjusters.next(DayOfWeek.MONDAY));
        Map<String, String> fields = new LinkedHashMap<>();
        List<UUID> crew = rounds.longestAgo();
        for (int place = 0; place < Math.min(MOST, crew.size()); place++) {
            fields.put(NAMES.get(place), crew.get(place).toString());
        }
        fields.put("span", "week");
        fields.put("from", monday.toString());
        fields.put("last", monday.plusWeeks(WEEKS).minusDays(1).toString());
        return page(frame, Said.filled(fields));
    }

    @POST
    public Response lay(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    OnCallRound round = round(typed);
                    var _ = rounds.lay(round);
                    return SaidOnce.at("/" + slug + "/shop/on-call", "kept");
                },
                refusals -> page(frames.of(Tab.SHOP), Said.again(typed, atFirst(refusals), frames.locale())));
    }

    private static OnCallRound round(Typed typed) {
        List<UUID> order = new ArrayList<>(List.of(typed.id(NAMES.getFirst())));
        for (String name : NAMES.subList(1, NAMES.size())) {
            UUID follows = typed.idOrNone(name);
            if (follows != null) {
                order.add(follows);
            }
        }
        OnCallRound.Span span =
                typed.oneOf("span", Set.of("week", "day")).equals("day") ? OnCallRound.Span.DAY : OnCallRound.Span.WEEK;
        LocalDate from = typed.day("from");
        LocalDate last = typed.day("last");
        if (last.isBefore(from)) {
            typed.refuse(Refusal.of("visit.last-before-first").at("last"));
        } else if (last.isAfter(from.plusDays(OnCallRound.LONGEST))) {
            typed.refuse(Refusal.of("on-call.round-too-long").at("last"));
        }
        typed.understood();
        return new OnCallRound(order, span, Window.ofDays(from, last));
    }

    /** What is wrong with the order is said where it begins. */
    private static List<Refusal> atFirst(List<Refusal> refusals) {
        return refusals.stream()
                .map(refusal -> "order".equals(refusal.field()) ? refusal.at(NAMES.getFirst()) : refusal)
                .toList();
    }

    private TemplateInstance page(Frame frame, Said form) {
        return Pages.oncallround(
                frame,
                people.all().stream()
                        .filter(member -> member.worksOn(frame.today()))
                        .map(OnCallRoundPages::person)
                        .toList(),
                NAMES,
                form);
    }

    private static Person person(Membership member) {
        return new Person(member.personId().toString(), member.name());
    }
}
