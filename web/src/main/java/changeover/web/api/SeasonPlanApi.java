package changeover.web.api;

import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.SeasonPlan;
import changeover.scheduling.dayplan.SeasonPlans;
import changeover.scheduling.dayplan.SeasonUnkept;
import changeover.scheduling.dayplan.SeasonVisit;
import changeover.scheduling.dayplan.SeasonVisits;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One opening of a season: its visits with their days or without, and the promises that no visit keeps. The days given
 * here are simple ones: the first day in each window on which a technician with the tickets has the hours free (two of
 * them where two are needed, at the time of day that is needed), half an hour between two visits; distances are not
 * reckoned.
 */
@Path("/api/v1/{slug}/seasons/{id}/plan")
@RolesAllowed({"owner", "office"})
public class SeasonPlanApi {

    private static final int MOST = 1000;

    /**
     * The season's answer.
     *
     * @param counts how many visits in each state: unplaced, placed, closed, cancelled, no_access, not_kept
     * @param visits those that go with the season, and what is late and waits where it takes that
     * @param unkept promises of the season that no visit keeps, with why
     */
    public record PlanDocument(
            UUID season,
            LocalDate first,
            LocalDate last,
            Map<String, Integer> counts,
            List<SeasonVisit> visits,
            List<SeasonUnkept> unkept) {}

    /**
     * The days that were given.
     *
     * @param notPlaced the visits that found none, with why: window_over, no_ticket, no_second, no_hours
     */
    public record GivenDocument(
            UUID season,
            LocalDate first,
            LocalDate last,
            List<Day> given,
            List<NotPlaced> notPlaced,
            Map<String, Integer> counts) {}

    /** @param second who goes along where two are needed; else null */
    public record Day(
            UUID visit, UUID technician, @Nullable UUID second, LocalDate day, LocalTime starts, LocalTime ends) {}

    public record NotPlaced(UUID visit, String why) {}

    @Inject
    Seasons seasons;

    @Inject
    SeasonVisits visits;

    @Inject
    SeasonPlans plans;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** @param year in which the season opens; the one that is open, else the next, when none is named */
    @GET
    @Transactional
    public PlanDocument plan(
            @PathParam("id") UUID id,
            @Nullable @QueryParam("year") Integer year,
            @Nullable @QueryParam("state") String said,
            @QueryParam("skip") @DefaultValue("0") int skip,
            @QueryParam("count") @DefaultValue("200") int count) {
        Season season = season(id);
        String state = AskedInQuery.oneOf("state", said, Set.copyOf(SeasonVisits.STATES));
        Window days = year == null ? season.openingAt(today.day()) : season.opening(Math.clamp(year, 2000, 2999));
        int most = Math.clamp(count, 1, MOST);
        return new PlanDocument(
                id,
                days.from(),
                days.last(),
                visits.counts(days),
                visits.list(days, state, Math.clamp(skip, 0, 1_000_000), most),
                visits.unkept(days, most));
    }

    /**
     * Gives days to what has none: optionally {@code year}, and {@code from}, the first day that may be given (tomorrow).
     * A visit that has a day keeps it. Refused as a whole when somebody gave one of those hours away meanwhile.
     */
    @POST
    public Response give(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "season plan " + id + body, () -> {
            Season season = season(id);
            Asked asked = Asked.of(body, json);
            LocalDate tomorrow = today.day().plusDays(1);
            LocalDate from = asked.value("from") == null ? tomorrow : asked.day("from");
            Window days = asked.value("year") == null
                    ? season.openingAt(today.day())
                    : season.opening(asked.whole("year", 2000, 2999));
            asked.nothingElse().understood();
            SeasonPlan plan = plans.suggest(days, from.isBefore(tomorrow) ? tomorrow : from);
            plans.give(plan);
            return Once.Answer.done(new GivenDocument(
                    id,
                    days.from(),
                    days.last(),
                    plan.given().stream().map(SeasonPlanApi::day).toList(),
                    plan.notPlaced().stream()
                            .map(one ->
                                    new NotPlaced(one.visit(), one.why().name().toLowerCase(Locale.ROOT)))
                            .toList(),
                    visits.counts(days)));
        });
    }

    private Season season(UUID id) {
        return seasons.find(id).map(OwnSeason::season).orElseThrow(NotFoundException::new);
    }

    private static Day day(SeasonPlan.Given given) {
        return new Day(given.visit(), given.technician(), given.second(), given.day(), given.starts(), given.ends());
    }
}
