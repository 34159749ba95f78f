package changeover.web.api;

import changeover.billing.notices.WholeDayMoves;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.change.DayCause;
import changeover.scheduling.dayplan.change.WholeDay;
import changeover.scheduling.dayplan.change.WholeDays;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A whole day that falls away: every visit that has not begun goes to the first later day on which it disturbs nobody, or back
 * to the season. Whoever was told an hour gets one message; who must be rung stands in {@code rings}.
 */
@Path("/api/v1/{slug}/days/{day}/move")
@RolesAllowed({"owner", "office"})
public class WholeDaysApi {

    private static final int A_FORTNIGHT = 14;

    /**
     * Where a visit goes.
     *
     * @param day null, with the technician and the hour, where it goes back to the season
     * @param standing kept, late (its window is over by then), open (no day yet) or over (no day, and its window is over)
     * @param unkept the promises that are broken, each with its last day
     */
    public record Goes(
            UUID visit,
            UUID home,
            LocalTime was,
            boolean told,
            @Nullable UUID technician,
            @Nullable LocalDate day,
            @Nullable LocalTime starts,
            String standing,
            List<Unkept> unkept) {}

    public record Unkept(String task, LocalDate last) {}

    /** @param shown the number that says yes to it */
    public record MoveDocument(LocalDate day, LocalDate first, LocalDate last, int shown, List<Goes> visits) {}

    @Inject
    WholeDays days;

    @Inject
    WholeDayMoves moves;

    @Inject
    Tongue tongue;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Where everything would go; nothing moves. Everybody's day unless technicians are named. */
    @GET
    @Transactional
    public MoveDocument look(
            @PathParam("day") String said,
            @Nullable @QueryParam("first") String first,
            @Nullable @QueryParam("last") String last,
            @QueryParam("technician") Set<String> technicians) {
        LocalDate day = DaysApi.day(said);
        Set<UUID> whose = technicians.stream()
                .map(one -> Objects.requireNonNullElse(AskedInQuery.id(one), new UUID(0, 0)))
                .collect(Collectors.toSet());
        return document(days.proposed(new WholeDays.Asked(
                day,
                whose,
                first == null ? day.plusDays(1) : AskedInQuery.day("first", first),
                last == null ? day.plusDays(A_FORTNIGHT) : AskedInQuery.day("last", last))));
    }

    /**
     * Moves it as it was shown: {@code shown} and {@code cause}; {@code why} for the office, {@code first}, {@code last} and
     * {@code technicians}, a list of documents with an {@code id}, as they were asked for.
     */
    @POST
    public Response move(@PathParam("day") String said, @HeaderParam("Operation-Id") String operation, String body) {
        LocalDate day = DaysApi.day(said);
        return once.answer(operation, "whole day " + day + body, () -> {
            Asked asked = Asked.of(body, json);
            int shown = asked.whole("shown", 0, Integer.MAX_VALUE);
            DayCause cause = cause(asked);
            String why = Objects.requireNonNullElse(
                    asked.line("why", 200), cause.words().in(tongue.locale()));
            LocalDate first = Objects.requireNonNullElse(asked.dayOrNone("first"), day.plusDays(1));
            LocalDate last = Objects.requireNonNullElse(asked.dayOrNone("last"), day.plusDays(A_FORTNIGHT));
            Set<UUID> whose =
                    asked.each("technicians").stream().map(one -> one.id("id")).collect(Collectors.toSet());
            asked.nothingElse().understood();
            var done =
                    moves.move(new WholeDays.Asked(day, whose, first, last), shown, new WholeDays.Reason(cause, why));
            return Once.Answer.done(document(done.proposed()));
        });
    }

    private static DayCause cause(Asked asked) {
        String code = asked.oneOf("cause", DayCause.codes());
        return code.isEmpty() ? DayCause.STORM : DayCause.ofCode(code);
    }

    private MoveDocument document(WholeDays.Proposed proposed) {
        return new MoveDocument(
                proposed.asked().day(),
                proposed.asked().first(),
                proposed.asked().last(),
                proposed.shown(),
                proposed.day().visits().stream()
                        .map(one -> goes(
                                one, proposed.unkept().getOrDefault(one.visit().visit(), List.of())))
                        .toList());
    }

    private Goes goes(WholeDay.Goes one, List<WholeDays.Unkept> unkept) {
        return new Goes(
                one.visit().visit(),
                one.visit().home(),
                Minutes.time(one.visit().was()),
                one.visit().told(),
                one.technician(),
                one.day(),
                one.day() == null ? null : Minutes.time(one.starts()),
                one.standing().code(),
                unkept.stream()
                        .map(task -> new Unkept(task.task().in(tongue.locale()), task.last()))
                        .toList());
    }
}
