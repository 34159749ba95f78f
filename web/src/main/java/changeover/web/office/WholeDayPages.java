package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.billing.notices.WholeDayMoves;
import changeover.billing.notices.WholeDaysMade;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refused;
import changeover.scheduling.dayplan.change.DayCause;
import changeover.scheduling.dayplan.change.WholeDays;
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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A storm day: all of a day moves to later days as it was shown, each customer is written to once, and promises are checked. */
@Path("/{slug}/season/{day}/move")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class WholeDayPages {

    private static final int A_FORTNIGHT = 14;

    /** A cause to choose. */
    public record Cause(String code, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance wholeday(Frame frame, WholeDayView view, List<Cause> causes, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    People people;

    @Inject
    WholeDays days;

    @Inject
    WholeDayMoves moves;

    @Inject
    WholeDaysMade made;

    @GET
    @Transactional
    public TemplateInstance look(@PathParam("day") String said, @Context UriInfo asked) {
        LocalDate day = SaidDay.of(said);
        var fields = new MultivaluedHashMap<String, String>();
        fields.putAll(asked.getQueryParameters());
        fields.putIfAbsent("first", List.of(day.plusDays(1).toString()));
        fields.putIfAbsent("last", List.of(day.plusDays(A_FORTNIGHT).toString()));
        var typed = new Typed(fields);
        try {
            WholeDays.Proposed proposed = days.proposed(asked(day, typed));
            return page(day, typed, proposed, Said.again(typed, List.of(), frames.locale()));
        } catch (Refused refused) {
            return page(day, typed, null, Said.again(typed, refused.refusals(), frames.locale()));
        }
    }

    /** Moved as it was shown; where it would go otherwise by now, it is shown again first. */
    @POST
    public Response move(
            @PathParam("slug") String slug, @PathParam("day") String said, MultivaluedMap<String, String> fields) {
        LocalDate day = SaidDay.of(said);
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    int shown = typed.whole("shown", 0, Integer.MAX_VALUE);
                    DayCause cause = DayCause.ofCode(typed.oneOf("cause", DayCause.codes()));
                    String why = typed.line("why", 200);
                    moves.move(
                            asked(day, typed),
                            shown,
                            new WholeDays.Reason(
                                    cause,
                                    Objects.requireNonNullElse(
                                            why, cause.words().in(frames.locale()))));
                    return SaidOnce.at("/" + slug + "/season/" + day + "/move", "kept");
                },
                refusals ->
                        page(day, typed, again(day, typed.asTyped()), Said.again(typed, refusals, frames.locale())));
    }

    private WholeDays.@Nullable Proposed again(LocalDate day, Map<String, List<String>> fields) {
        try {
            var map = new MultivaluedHashMap<String, String>();
            map.putAll(fields);
            return days.proposed(asked(day, new Typed(map)));
        } catch (Refused refused) {
            return null;
        }
    }

    /** Everybody ticked is everybody, whoever comes to the crew meanwhile. */
    private WholeDays.Asked asked(LocalDate day, Typed typed) {
        LocalDate first = typed.day("first");
        LocalDate last = typed.day("last");
        Set<UUID> ticked =
                typed.each("technicians").stream().map(WholeDayPages::id).collect(Collectors.toSet());
        typed.understood();
        Set<UUID> crew =
                people.technicians(day).stream().map(Membership::personId).collect(Collectors.toSet());
        return new WholeDays.Asked(day, ticked.equals(crew) ? Set.of() : ticked, first, last);
    }

    private static UUID id(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException nobody) {
            return new UUID(0, 0);
        }
    }

    private TemplateInstance page(LocalDate day, Typed typed, WholeDays.@Nullable Proposed proposed, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        Map<UUID, String> names = WholeDayView.names(people.all());
        List<String> ticked = typed.each("technicians");
        List<WholeDayView.Line> was =
                made.of(day).stream().map(one -> WholeDayView.made(one, frame)).toList();
        var view = new WholeDayView(
                day,
                DayWords.of(frame.locale()).withWeekday(day),
                people.technicians(day).stream()
                        .map(one -> new WholeDayView.Person(
                                one.personId(),
                                one.name(),
                                ticked.isEmpty()
                                        || ticked.contains(one.personId().toString())))
                        .toList(),
                proposed == null
                        ? List.of()
                        : proposed.day().visits().stream()
                                .map(one -> WholeDayView.line(
                                        one,
                                        proposed.unkept()
                                                .getOrDefault(one.visit().visit(), List.of()),
                                        names,
                                        frame))
                                .toList(),
                proposed == null ? 0 : proposed.shown(),
                was);
        List<Cause> causes = Arrays.stream(DayCause.values())
                .map(cause -> new Cause(cause.code(), cause.words().in(frame.locale())))
                .toList();
        return Pages.wholeday(frame, view, causes, form);
    }
}
