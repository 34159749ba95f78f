package changeover.web.office;

import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.SeasonPlan;
import changeover.scheduling.dayplan.SeasonPlans;
import changeover.scheduling.dayplan.SeasonVisit;
import changeover.scheduling.dayplan.SeasonVisits;
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
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Days for a whole season at once: first what would be given and what would not, then a person's yes. */
@Path("/{slug}/season/days")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class SeasonDaysPages {

    /** As many of each are listed. */
    private static final int SHOWN = 100;

    private static final int MOST = 100_000;

    public record Choice(UUID id, String words) {}

    /** @param when the day and the hour it would get; the last day of its window for one that gets none */
    public record Line(UUID visit, String home, String when, String technician, String why) {}

    /**
     * @param given how many get a day
     * @param shown tells this answer from any other; it comes back with the yes
     * @param first the first day given, in words
     */
    public record Answer(
            UUID season,
            int given,
            int shown,
            int all,
            String first,
            String last,
            int windowOver,
            int noTicket,
            int noHours,
            List<Line> days,
            List<Line> none) {

        /** How many get no day. */
        public int left() {
            return all - given;
        }
    }

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance seasondays(
                Frame frame, List<Choice> seasons, @Nullable Answer answer, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Seasons seasons;

    @Inject
    SeasonPlans plans;

    @Inject
    SeasonVisits visits;

    @Inject
    People people;

    @GET
    @Transactional
    public TemplateInstance look(@Nullable @QueryParam("season") UUID season) {
        Frame frame = frames.of(Tab.SEASON);
        OwnSeason chosen =
                season == null ? nearest(frame.today()) : seasons.find(season).orElseThrow(NotFoundException::new);
        return page(frame, chosen, Said.blank());
    }

    /** What is given is reckoned anew; when it is no longer what was shown, it is shown again first. */
    @POST
    public Response give(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        UUID season = typed.id("season");
        int shown = typed.whole("shown", 0, Integer.MAX_VALUE);
        return desk.answer(
                () -> {
                    typed.understood();
                    Frame frame = frames.of(Tab.SEASON);
                    OwnSeason chosen = seasons.find(season)
                            .orElseThrow(() ->
                                    Refusal.of("typed.choose").at("season").thrown());
                    SeasonPlan plan = plan(chosen, frame);
                    if (shown(plan) != shown) {
                        throw Refusal.of("season-plan.changed").thrown();
                    }
                    plans.give(plan);
                    return SaidOnce.at("/" + slug + "/season", "days-given");
                },
                refusals -> {
                    Frame frame = frames.of(Tab.SEASON);
                    return page(
                            frame,
                            seasons.find(season).orElseGet(() -> nearest(frame.today())),
                            Said.again(typed, refusals, frame.locale()));
                });
    }

    private TemplateInstance page(Frame frame, @Nullable OwnSeason chosen, Said form) {
        List<Choice> choices = seasons.all().stream()
                .map(one -> new Choice(one.id(), words(one, frame)))
                .toList();
        return Pages.seasondays(frame, choices, chosen == null ? null : answer(chosen, frame), form);
    }

    private String words(OwnSeason season, Frame frame) {
        Window days = season.season().openingAt(frame.today());
        return season.season().name(frame.locale()) + ", " + frame.brief(days.from()) + " – "
                + frame.brief(days.last());
    }

    private Answer answer(OwnSeason season, Frame frame) {
        SeasonPlan plan = plan(season, frame);
        Map<UUID, SeasonVisit> open =
                visits.list(season.season().openingAt(frame.today()), "unplaced", 0, MOST).stream()
                        .collect(Collectors.toMap(SeasonVisit::visit, Function.identity()));
        Map<UUID, String> names = people.all().stream()
                .collect(Collectors.toMap(Membership::personId, Membership::name, (one, _) -> one));
        List<LocalDate> days =
                plan.given().stream().map(SeasonPlan.Given::day).sorted().toList();
        return new Answer(
                season.id(),
                days.size(),
                shown(plan),
                days.size() + plan.notPlaced().size(),
                days.isEmpty() ? "" : frame.brief(days.getFirst()),
                days.isEmpty() ? "" : frame.brief(days.getLast()),
                count(plan, SeasonPlan.Why.WINDOW_OVER),
                count(plan, SeasonPlan.Why.NO_TICKET),
                count(plan, SeasonPlan.Why.NO_HOURS),
                plan.given().stream()
                        .sorted(Comparator.comparing(SeasonPlan.Given::day).thenComparing(SeasonPlan.Given::starts))
                        .limit(SHOWN)
                        .map(one -> new Line(
                                one.visit(),
                                home(open, one.visit()),
                                frame.brief(one.day()) + ", " + one.starts(),
                                names.getOrDefault(one.technician(), ""),
                                ""))
                        .toList(),
                plan.notPlaced().stream()
                        .limit(SHOWN)
                        .map(one -> new Line(
                                one.visit(),
                                home(open, one.visit()),
                                open.containsKey(one.visit())
                                        ? frame.brief(open.get(one.visit()).last())
                                        : "",
                                "",
                                one.why().name()))
                        .toList());
    }

    private static String home(Map<UUID, SeasonVisit> open, UUID visit) {
        SeasonVisit known = open.get(visit);
        return known == null ? "" : known.address();
    }

    /** Another visit, day, hour or technician makes it another. */
    private static int shown(SeasonPlan plan) {
        return Set.copyOf(plan.given()).hashCode() & Integer.MAX_VALUE;
    }

    private static int count(SeasonPlan plan, SeasonPlan.Why why) {
        return (int) plan.notPlaced().stream().filter(one -> one.why() == why).count();
    }

    private SeasonPlan plan(OwnSeason season, Frame frame) {
        return plans.suggest(
                season.season().openingAt(frame.today()), frame.today().plusDays(1));
    }

    /** The season that is under way with a turn in it, else whichever comes next. */
    private @Nullable OwnSeason nearest(LocalDate day) {
        return seasons.all().stream()
                .min(Comparator.comparing((OwnSeason one) -> one.season().changeover() == null)
                        .thenComparing(one -> one.season().openingAt(day).from()))
                .orElse(null);
    }
}
