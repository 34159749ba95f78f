package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.SeasonVisits;
import changeover.scheduling.dayplan.season.SeasonAcceptance;
import changeover.scheduling.dayplan.season.SeasonRun;
import changeover.scheduling.dayplan.season.SeasonRunReading;
import changeover.scheduling.dayplan.season.SeasonRuns;
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
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A planned season: what is kept, what is not and what would keep it; accepted whole, or by the visits of a week. */
@Path("/{slug}/season/plans/{run}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class SeasonRunPages {

    private static final int SHOWN = 100;
    private static final int MOST = 10_000;

    public record Unkept(UUID visit, String home, String last, String why) {}

    public record Week(String address, String monday, String holds, String booked, String planned, String left) {}

    public record Stop(UUID visit, String home, String hours, int road, String second, boolean given, boolean tried) {}

    /** One technician's day of the answer. */
    public record Road(String day, String technician, List<Stop> stops) {}

    /** A promise that no visit keeps. */
    public record Broken(UUID homeId, String home, String last, String task, String why) {}

    /** A day that cannot be given any more. */
    public record Gone(UUID visit, String home, String day, String why) {}

    /** The answer; null while it runs. */
    public record Answer(
            SeasonRunInWords.More more,
            int late,
            List<Broken> broken,
            List<Gone> gone,
            List<Unkept> unkept,
            String svg,
            List<Week> weeks,
            String week,
            String weekWords,
            List<Road> roads,
            boolean open) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance seasonrun(
                Frame frame, SeasonRunInWords.Run run, @Nullable Answer answer, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    SeasonRuns runs;

    @Inject
    SeasonAcceptance acceptance;

    @Inject
    SeasonVisits visits;

    @Inject
    SeasonRunReading reading;

    @Inject
    SeasonRunInWords inWords;

    @GET
    @Transactional
    public TemplateInstance read(@PathParam("run") UUID run, @Nullable @QueryParam("week") String week) {
        return page(run, day(week), Said.blank());
    }

    @POST
    @Path("halt")
    public Response halt(@PathParam("slug") String slug, @PathParam("run") UUID run) {
        return desk.answer(
                () -> {
                    var _ = known(run);
                    runs.halt(run);
                    return "/" + slug + "/season/plans/" + run;
                },
                refusals -> page(run, null, Said.again(new Typed(none()), refusals, frames.locale())));
    }

    /** All days of the answer, or with {@code some} those of the visits that are named. */
    @POST
    @Path("acceptance")
    public Response accept(
            @PathParam("slug") String slug, @PathParam("run") UUID run, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = known(run);
                    int given = acceptance
                            .accept(run, typed.ticked("some") ? visits(typed) : null)
                            .given();
                    String page = "/" + slug + "/season/plans/" + run + week(fields);
                    return given == 0 ? page : SaidOnce.at(page, "days-given");
                },
                refusals -> page(run, day(fields.getFirst("week")), Said.again(typed, refusals, frames.locale())));
    }

    private static Set<UUID> visits(Typed typed) {
        return typed.each("visit").stream().flatMap(text -> id(text).stream()).collect(Collectors.toSet());
    }

    private static Optional<UUID> id(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }

    private static String week(MultivaluedMap<String, String> fields) {
        LocalDate day = day(fields.getFirst("week"));
        return day == null ? "" : "?week=" + day;
    }

    private static @Nullable LocalDate day(@Nullable String said) {
        try {
            return said == null || said.isBlank() ? null : Typed.readDay(said);
        } catch (DateTimeException notADay) {
            throw new NotFoundException();
        }
    }

    private static MultivaluedMap<String, String> none() {
        return new MultivaluedHashMap<>();
    }

    private SeasonRun known(UUID run) {
        return runs.find(run).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(UUID id, @Nullable LocalDate week, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        SeasonRun run = known(id);
        return Pages.seasonrun(frame, inWords.run(run, frame), run.running() ? null : answer(run, week, frame), form);
    }

    private Answer answer(SeasonRun run, @Nullable LocalDate chosen, Frame frame) {
        List<SeasonRunReading.Row> unkept = reading.unkept(run.id(), MOST);
        List<SeasonRunReading.Week> weeks = reading.weeks(run.id());
        LocalDate monday = monday(weeks, chosen, run.question().first());
        List<SeasonRunReading.Row> kept = reading.kept(run.id(), new Window(monday, monday.plusWeeks(1)));
        PlanningChart chart = new PlanningChart(weeks, unkept);
        return new Answer(
                inWords.more(reading.more(run.id()), frame),
                reading.late(run.id()),
                visits.unkept(run.question().days(), MOST).stream()
                        .map(one -> new Broken(
                                one.home(),
                                one.address(),
                                frame.brief(one.last()),
                                one.wording().in(frame.locale()),
                                one.why().in(frame.locale())))
                        .toList(),
                acceptance.leftOut(run.id()).stream()
                        .map(one -> new Gone(
                                one.visit(),
                                one.home(),
                                frame.brief(one.day()) + ", " + one.starts(),
                                one.why().code()))
                        .toList(),
                unkept.stream()
                        .limit(SHOWN)
                        .map(one -> new Unkept(
                                one.visit(), one.home(), frame.brief(one.last()), Objects.requireNonNull(one.why())))
                        .toList(),
                chart.svg(frame),
                chart.rows(frame),
                monday.toString(),
                frame.brief(monday),
                PlanningRoads.of(kept, frame),
                kept.stream().anyMatch(one -> !one.given() && !one.tried()));
    }

    /** The week that was chosen, else the first in which anything is planned. */
    private static LocalDate monday(List<SeasonRunReading.Week> weeks, @Nullable LocalDate chosen, LocalDate first) {
        LocalDate day = chosen != null
                ? chosen
                : weeks.stream()
                        .filter(week -> week.given() > 0)
                        .map(SeasonRunReading.Week::monday)
                        .findFirst()
                        .orElse(first);
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }
}
