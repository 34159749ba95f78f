package changeover.web.field;

import changeover.billing.serving.Servings;
import changeover.billing.serving.Word;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Wording;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.visits.VisitEnd;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OwnVisits;
import changeover.web.session.ReadingScale;
import changeover.web.session.ShutInWords;
import changeover.web.session.StopInWords;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The day's stops in order, with what must be in the van before the first. */
@Path("/{slug}/field")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class StopsPages {

    /**
     * @param how how it ended; empty while it is open
     * @param unpaid ask or not, where the office decided so; empty elsewhere
     * @param part whether it waits for a part
     * @param stopped what must not be used there, or empty
     * @param shut that the home is shut on that day, or empty
     */
    public record Stop(
            UUID visit,
            String starts,
            String home,
            String opens,
            int minutes,
            int tasks,
            String how,
            String note,
            String unpaid,
            boolean part,
            String stopped,
            String shut) {}

    public record Load(String quantity, String part, String size, boolean eachTime) {}

    /** Somebody whose day the office may look at. */
    public record Other(UUID person, String name, int stops) {}

    /**
     * A day of somebody, and the days on both sides of it.
     *
     * @param rings whether whoever looks is on call
     * @param along what was ordered for one of the stops and came
     */
    public record View(
            String technician,
            String day,
            boolean today,
            boolean rings,
            String before,
            String after,
            List<Stop> stops,
            List<Load> load,
            List<FieldParts.Along> along,
            List<Other> others) {}

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance stops(Frame frame, View view);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    DayPlans plans;

    @Inject
    CurrentTenant current;

    @Inject
    OwnVisits own;

    @Inject
    Servings servings;

    @Inject
    FieldParts parts;

    @Inject
    TakesCalls calls;

    @Inject
    StopInWords stops;

    @Inject
    ShutInWords shut;

    @GET
    @Transactional
    public TemplateInstance stops(
            @QueryParam("day") @Nullable String asked, @QueryParam("technician") @Nullable String technician) {
        Frame frame = frames.of(null);
        LocalDate day = day(asked, frame.today());
        List<DayPlan> all = own.onlyOwn() ? List.of() : plans.of(day);
        DayPlan plan = all.stream()
                .filter(one -> one.technicianId().toString().equals(technician))
                .findFirst()
                .orElseGet(() -> all.isEmpty() ? plans.of(current.person(), day) : all.getFirst());
        List<UUID> homes =
                plan.stops().stream().map(DayPlan.Stop::homeId).distinct().toList();
        Map<UUID, Word> words = servings.at(homes, frame.today());
        List<UUID> visits = plan.stops().stream().map(DayPlan.Stop::visitId).toList();
        Set<UUID> waiting = parts.waiting(visits, frame.today());
        Map<UUID, String> stopped = stops.namesIn(homes, frame);
        Map<UUID, String> closed = shut.on(homes, day, frame.locale());
        List<Other> others = all.stream()
                .map(one -> new Other(
                        one.technicianId(), one.technician(), one.stops().size()))
                .toList();
        return Pages.stops(
                frame,
                new View(
                        plan.technician(),
                        frame.inWords(day),
                        day.equals(frame.today()),
                        calls.rings(),
                        day.minusDays(1).toString(),
                        day.plusDays(1).toString(),
                        plan.stops().stream()
                                .map(stop -> stop(
                                        stop,
                                        words.get(stop.homeId()),
                                        waiting.contains(stop.visitId()),
                                        stopped.getOrDefault(stop.homeId(), ""),
                                        closed.getOrDefault(stop.homeId(), "")))
                                .toList(),
                        plan.load().stream()
                                .map(one -> load(one, frame.locale()))
                                .toList(),
                        parts.along(visits, frame),
                        others));
    }

    /** A day that does not read is today. */
    private static LocalDate day(@Nullable String asked, LocalDate today) {
        try {
            LocalDate day = asked == null ? today : Typed.readDay(asked);
            return day.getYear() < 1900 || day.getYear() > 2200 ? today : day;
        } catch (DateTimeException notADay) {
            return today;
        }
    }

    private static Stop stop(DayPlan.Stop stop, @Nullable Word word, boolean part, String stopped, String shut) {
        VisitEnd ended = stop.ended();
        return new Stop(
                stop.visitId(),
                stop.starts().toString(),
                stop.home(),
                stop.opens() == null ? "" : stop.opens(),
                stop.minutes(),
                stop.tasks(),
                ended == null ? "" : ended.code(),
                stop.note() == null ? "" : stop.note(),
                ended != null || word == null || word == Word.SERVE ? "" : word.code(),
                part,
                stopped,
                shut);
    }

    private static Load load(DayPlan.Load load, Locale locale) {
        Wording part = load.part();
        return new Load(
                ReadingScale.figure(load.quantity().stripTrailingZeros(), locale),
                part.in(locale),
                load.size() == null ? "" : load.size(),
                load.eachTime());
    }
}
