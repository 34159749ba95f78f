package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.dayplan.Due;
import changeover.scheduling.dayplan.change.Rings;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.ShutInWords;
import changeover.web.session.StopInWords;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The season as weeks and lists, and one day as it will be gone through. */
@Path("/{slug}/season")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class SeasonPages {

    private static final int SHOWN = 200;

    /** The season in one piece. */
    public record View(
            SeasonChart.Weeks weeks,
            String from,
            String until,
            WordInWords.View word,
            List<TodayPages.Visit> late,
            List<TodayPages.Visit> due) {}

    /** One technician's day. */
    public record Round(UUID person, String technician, List<Stop> stops, List<String> load) {}

    public record Stop(
            UUID visit,
            UUID homeId,
            String home,
            String time,
            String opens,
            String phone,
            int minutes,
            int tasks,
            HoursInWords.Hour hour,
            String note,
            boolean part,
            String stopped,
            String shut) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance season(Frame frame, View view, int rings);

        static native TemplateInstance seasonday(
                Frame frame, String title, LocalDate chosen, List<Round> rounds, boolean toTell, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    SeasonChart chart;

    @Inject
    Due due;

    @Inject
    DayPlans days;

    @Inject
    Rings rings;

    @Inject
    HoursInWords hours;

    @Inject
    WordInWords word;

    @Inject
    OrderRows orders;

    @Inject
    StopInWords stops;

    @Inject
    ShutInWords shut;

    @GET
    @Transactional
    public TemplateInstance season(@Nullable @QueryParam("day") String day) {
        Frame frame = frames.of(Tab.SEASON);
        if (day != null) {
            return page(frame, SaidDay.of(day), Said.blank());
        }
        LocalDate today = frame.today();
        DayWords words = DayWords.of(frame.locale());
        String from = words.brief(chart.first(today));
        String until = words.brief(chart.last(today));
        return Pages.season(
                frame,
                new View(
                        chart.of(frame, from + " – " + until),
                        from,
                        until,
                        word.of(chart.first(today), frame),
                        due.late(today, 0, SHOWN).stream()
                                .map(visit -> TodayPages.visit(visit, frame))
                                .toList(),
                        due.withoutDay(today, 0, SHOWN).stream()
                                .map(visit -> TodayPages.visit(visit, frame))
                                .toList()),
                rings.count());
    }

    @GET
    @Path("{day}")
    @Transactional
    public TemplateInstance day(@PathParam("day") String day) {
        return day(SaidDay.of(day), Said.blank());
    }

    /** The day with what was said about a form of it; inside a transaction. */
    TemplateInstance day(LocalDate day, Said form) {
        return page(frames.of(Tab.SEASON), day, form);
    }

    private TemplateInstance page(Frame frame, LocalDate day, Said form) {
        List<DayPlan> plans = days.of(day);
        List<UUID> visits = plans.stream()
                .flatMap(plan -> plan.stops().stream())
                .map(DayPlan.Stop::visitId)
                .toList();
        Map<UUID, HoursInWords.Hour> known = hours.of(visits, frame);
        Set<UUID> waiting = orders.waiting(visits, frame);
        Map<UUID, String> stopped = stops.namesIn(
                plans.stream()
                        .flatMap(plan -> plan.stops().stream())
                        .map(DayPlan.Stop::homeId)
                        .toList(),
                frame);
        Map<UUID, String> closed = shut.on(
                plans.stream()
                        .flatMap(plan -> plan.stops().stream())
                        .map(DayPlan.Stop::homeId)
                        .toList(),
                day,
                frame.locale());
        List<Round> rounds = plans.stream()
                .map(plan -> round(plan, frame, known, waiting, stopped, closed))
                .toList();
        boolean toTell =
                !day.isBefore(frame.today()) && known.values().stream().anyMatch(HoursInWords.Hour::isProposed);
        return Pages.seasonday(frame, DayWords.of(frame.locale()).withWeekday(day), day, rounds, toTell, form);
    }

    private static Round round(
            DayPlan plan,
            Frame frame,
            Map<UUID, HoursInWords.Hour> known,
            Set<UUID> waiting,
            Map<UUID, String> stopped,
            Map<UUID, String> shut) {
        return new Round(
                plan.technicianId(),
                plan.technician(),
                plan.stops().stream()
                        .map(stop -> new Stop(
                                stop.visitId(),
                                stop.homeId(),
                                stop.home(),
                                stop.starts().toString(),
                                stop.opens() == null ? "" : stop.opens(),
                                stop.phone() == null ? "" : stop.phone(),
                                stop.minutes(),
                                stop.tasks(),
                                Objects.requireNonNull(known.get(stop.visitId())),
                                stop.note() == null ? "" : stop.note(),
                                waiting.contains(stop.visitId()),
                                stopped.getOrDefault(stop.homeId(), ""),
                                shut.getOrDefault(stop.homeId(), "")))
                        .toList(),
                plan.load().stream()
                        .map(load -> load.part().in(frame.locale())
                                + (load.size() == null ? "" : " " + load.size())
                                + " × " + load.quantity().stripTrailingZeros().toPlainString())
                        .toList());
    }
}
