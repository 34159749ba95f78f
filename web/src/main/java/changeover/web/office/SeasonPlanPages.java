package changeover.web.office;

import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.season.SeasonQuestion;
import changeover.scheduling.dayplan.season.SeasonRuns;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
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
import java.time.format.TextStyle;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Asking for a season to be planned, on the crew that stands or on one that is only thought of. */
@Path("/{slug}/season/plans")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class SeasonPlanPages {

    public record Choice(String code, String words) {}

    public record View(
            List<Choice> seasons, List<Choice> technicians, List<Choice> weekdays, List<SeasonRunInWords.Run> runs) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance seasonplans(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Seasons seasons;

    @Inject
    People people;

    @Inject
    SeasonRuns runs;

    @Inject
    SeasonRunInWords inWords;

    @GET
    @Transactional
    public TemplateInstance ask() {
        Frame frame = frames.of(Tab.SEASON);
        LocalDate tomorrow = frame.today().plusDays(1);
        return page(
                frame, Said.filled(Map.of("season", nearest(frame.today()), "from", tomorrow.toString(), "more", "0")));
    }

    @POST
    public Response start(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    SeasonQuestion asked = question(typed, frames.of(Tab.SEASON).today());
                    return "/" + slug + "/season/plans/" + runs.start(asked);
                },
                refusals -> page(frames.of(Tab.SEASON), Said.again(typed, refusals, frames.locale())));
    }

    private SeasonQuestion question(Typed typed, LocalDate today) {
        OwnSeason season = seasons.find(typed.id("season")).orElse(null);
        LocalDate from = typed.day("from");
        UUID without = typed.idOrNone("without");
        int more = typed.whole("more", 0, SeasonQuestion.MOST_MORE);
        if (season == null) {
            typed.refuse(Refusal.of("typed.choose").at("season"));
        }
        if (without != null && people.of(without).isEmpty()) {
            typed.refuse(Refusal.of("typed.choose").at("without"));
        }
        LocalDate first = typed.dayOrNone("moreFrom");
        LocalDate last = typed.dayOrNone("moreLast");
        if (first != null && last != null && last.isBefore(first)) {
            typed.refuse(Refusal.of("season-run.more-days").at("moreLast"));
        }
        typed.understood();
        Window days = season(season).season().openingAt(today);
        Set<String> tickets = new HashSet<>(typed.each("moreTickets"));
        tickets.retainAll(TicketNeeded.KINDS);
        LocalDate tomorrow = today.plusDays(1);
        return new SeasonQuestion(
                season(season).id(),
                days,
                from.isBefore(tomorrow) ? tomorrow : from,
                without == null ? Set.of() : Set.of(without),
                more,
                more == 0 ? null : moreDays(days, first, last),
                tickets,
                idle(typed));
    }

    private static OwnSeason season(@Nullable OwnSeason season) {
        return Objects.requireNonNull(season);
    }

    private static Window moreDays(Window season, @Nullable LocalDate first, @Nullable LocalDate last) {
        LocalDate from = first == null ? season.from() : first;
        LocalDate until = last == null ? season.last() : last;
        return Window.ofDays(from, until.isBefore(from) ? from : until);
    }

    private static Set<DayOfWeek> idle(Typed typed) {
        return typed.each("idle").stream()
                .flatMap(said -> Stream.of(DayOfWeek.values())
                        .filter(day -> String.valueOf(day.getValue()).equals(said)))
                .collect(Collectors.toSet());
    }

    private TemplateInstance page(Frame frame, Said form) {
        return Pages.seasonplans(
                frame,
                new View(
                        seasons.all().stream()
                                .map(one -> new Choice(one.id().toString(), words(one, frame)))
                                .toList(),
                        people.technicians(frame.today()).stream()
                                .map(SeasonPlanPages::choice)
                                .toList(),
                        Stream.of(DayOfWeek.values())
                                .limit(6)
                                .map(day -> new Choice(
                                        String.valueOf(day.getValue()),
                                        day.getDisplayName(TextStyle.FULL, frame.locale())))
                                .toList(),
                        runs.recent().stream()
                                .map(run -> inWords.run(run, frame))
                                .toList()),
                form);
    }

    private static Choice choice(Membership member) {
        return new Choice(member.personId().toString(), member.name());
    }

    static String words(OwnSeason season, Frame frame) {
        Window days = season.season().openingAt(frame.today());
        return season.season().name(frame.locale()) + ", " + frame.brief(days.from()) + " – "
                + frame.brief(days.last());
    }

    /** The season that is under way with a turn in it, else whichever comes next. */
    private String nearest(LocalDate day) {
        return seasons.all().stream()
                .min(Comparator.comparing((OwnSeason one) -> one.season().changeover() == null)
                        .thenComparing(one -> one.season().openingAt(day).from()))
                .map(one -> one.id().toString())
                .orElse("");
    }
}
