package changeover.web.api;

import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.season.SeasonAcceptance;
import changeover.scheduling.dayplan.season.SeasonQuestion;
import changeover.scheduling.dayplan.season.SeasonRun;
import changeover.scheduling.dayplan.season.SeasonRunReading;
import changeover.scheduling.dayplan.season.SeasonRuns;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Seasons planned in the background: on the crew as it stands, or on one that is only thought of. The answer keeps every
 * promise, or names those it cannot keep, why, and the technician-days or tickets that would.
 */
@Path("/api/v1/{slug}/seasons/{id}/plan-runs")
@RolesAllowed({"owner", "office"})
public class SeasonRunsApi {

    private static final Map<String, DayOfWeek> WEEKDAYS = Stream.of(DayOfWeek.values())
            .collect(Collectors.toMap(day -> day.name().toLowerCase(Locale.ROOT), Function.identity()));

    /**
     * A day that was not given.
     *
     * @param why past, window_moved, home_shut, left, day_off or hour_taken
     */
    public record Left(UUID visit, LocalDate day, LocalTime starts, String why) {}

    public record AcceptedDocument(UUID run, int given, List<Left> leftOut) {}

    @Inject
    Seasons seasons;

    @Inject
    SeasonRuns runs;

    @Inject
    SeasonAcceptance acceptance;

    @Inject
    SeasonRunReading reading;

    @Inject
    People people;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** The newest first, without their visits. */
    @GET
    @Transactional
    public List<SeasonRunDocument> all(@PathParam("id") UUID id) {
        var _ = season(id);
        return runs.recent().stream()
                .filter(run -> run.question().season().equals(id))
                .map(SeasonRunDocument::standing)
                .toList();
    }

    @GET
    @Path("{run}")
    @Transactional
    public SeasonRunDocument one(@PathParam("id") UUID id, @PathParam("run") UUID run) {
        return SeasonRunDocument.of(known(id, run), reading);
    }

    /**
     * Asks for the season to be planned: optionally {@code year}, {@code from} (the first day that may be given; tomorrow),
     * {@code without} (ids of technicians), {@code more} with {@code moreFrom, moreLast, moreTickets}, and {@code idle}
     * (weekdays: {@code friday}). Nothing is given before somebody accepts.
     */
    @POST
    public Response start(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "plan runs " + id + body, () -> {
            OwnSeason season = season(id);
            UUID run = runs.start(question(season, Asked.of(body, json)));
            return Once.Answer.made(
                    "/api/v1/" + slug + "/seasons/" + id + "/plan-runs/" + run,
                    SeasonRunDocument.standing(known(id, run)));
        });
    }

    /** Stops the search; what it has found so far is the answer. */
    @POST
    @Path("{run}/halt")
    public Response halt(
            @PathParam("id") UUID id, @PathParam("run") UUID run, @HeaderParam("Operation-Id") String operation) {
        return once.answer(operation, "plan run halt " + run, () -> {
            var _ = known(id, run);
            runs.halt(run);
            return Once.Answer.done(SeasonRunDocument.standing(known(id, run)));
        });
    }

    /**
     * Gives the days of the answer: of all visits, or of those that {@code visits} names. What cannot be given any more stands in
     * {@code leftOut}.
     */
    @POST
    @Path("{run}/acceptance")
    public Response accept(
            @PathParam("id") UUID id,
            @PathParam("run") UUID run,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "plan run acceptance " + run + body, () -> {
            var _ = known(id, run);
            Asked asked = Asked.of(body, json);
            @Nullable
            Set<UUID> visits = asked.value("visits") == null ? null : new HashSet<>(AskedTexts.ids(asked, "visits"));
            asked.nothingElse().understood();
            SeasonAcceptance.Accepted accepted = acceptance.accept(run, visits);
            return Once.Answer.done(new AcceptedDocument(
                    run,
                    accepted.given(),
                    accepted.leftOut().stream()
                            .map(one -> new Left(
                                    one.visit(),
                                    one.day(),
                                    one.starts(),
                                    one.why().code()))
                            .toList()));
        });
    }

    private SeasonQuestion question(OwnSeason season, Asked asked) {
        LocalDate tomorrow = today.day().plusDays(1);
        LocalDate from = asked.value("from") == null ? tomorrow : asked.day("from");
        Window days = asked.value("year") == null
                ? season.season().openingAt(today.day())
                : season.season().opening(asked.whole("year", 2000, 2999));
        Set<UUID> without = new HashSet<>(AskedTexts.ids(asked, "without"));
        if (!without.stream().allMatch(this::isTechnician)) {
            asked.refuse(Refusal.of("appointment.nobody").at("without"));
        }
        int more = asked.wholeOr("more", 0, SeasonQuestion.MOST_MORE, 0);
        @Nullable Window moreDays = more == 0 ? null : moreDays(asked, days);
        Set<String> tickets = words(asked, "moreTickets", TicketNeeded.KINDS);
        Set<DayOfWeek> idle = words(asked, "idle", WEEKDAYS.keySet()).stream()
                .flatMap(word -> Stream.ofNullable(WEEKDAYS.get(word)))
                .collect(Collectors.toSet());
        asked.nothingElse().understood();
        return new SeasonQuestion(
                season.id(), days, from.isBefore(tomorrow) ? tomorrow : from, without, more, moreDays, tickets, idle);
    }

    private static Window moreDays(Asked asked, Window season) {
        LocalDate first = asked.value("moreFrom") == null ? season.from() : asked.day("moreFrom");
        LocalDate last = asked.value("moreLast") == null ? season.last() : asked.day("moreLast");
        if (last.isBefore(first)) {
            asked.refuse(Refusal.of("season-run.more-days").at("moreLast"));
            return season;
        }
        return Window.ofDays(first, last);
    }

    private static Set<String> words(Asked asked, String member, Set<String> known) {
        Set<String> words = new HashSet<>(AskedTexts.of(asked, member));
        if (!known.containsAll(words)) {
            asked.refuse(Refusal.of(
                            "typed.one-of",
                            Map.of(
                                    "words",
                                    String.join(", ", known.stream().sorted().toList())))
                    .at(member));
            words.retainAll(known);
        }
        return words;
    }

    private boolean isTechnician(UUID person) {
        return people.of(person)
                .filter(member -> member.role() == Role.TECHNICIAN)
                .isPresent();
    }

    private OwnSeason season(UUID id) {
        return seasons.find(id).orElseThrow(NotFoundException::new);
    }

    private SeasonRun known(UUID season, UUID run) {
        return runs.find(run)
                .filter(one -> one.question().season().equals(season))
                .orElseThrow(NotFoundException::new);
    }
}
