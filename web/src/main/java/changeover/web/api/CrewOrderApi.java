package changeover.web.api;

import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.change.CrewOrdered;
import changeover.scheduling.dayplan.change.CrewsDay;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A day to come laid over everybody who works then; nothing moves before somebody keeps it. */
@Path("/api/v1/{slug}/days/{day}/crew-order")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({"owner", "office"})
public class CrewOrderApi {

    /**
     * @param order what keeps it, with {@code road} as {@code shown}; null where none keeps every hour that stays
     * @param road minutes on the road of all
     * @param before minutes as the day stands
     * @param plain whether the solver gave no answer and the plain reckoning did
     */
    public record CrewOrderDocument(
            @Nullable String order,
            boolean better,
            boolean plain,
            int road,
            int before,
            String roads,
            List<CrewRound> rounds) {}

    /** @param lunch null where none is kept */
    public record CrewRound(
            UUID technician,
            LocalTime leaves,
            @Nullable LocalTime lunch,
            LocalTime back,
            int road,
            List<CrewArrival> visits) {}

    /**
     * @param was the hour it had
     * @param whose the technician who had it
     */
    public record CrewArrival(UUID visit, LocalTime starts, LocalTime ends, LocalTime was, UUID whose, boolean stays) {}

    @Inject
    CurrentTenant current;

    @Inject
    CrewsDay crews;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** The search holds no transaction. */
    @GET
    public CrewOrderDocument lay(@PathParam("day") String said) {
        LocalDate day = DaysApi.day(said);
        CrewsDay.Proposed one = crews.search(current.run(current.id(), current.person(), () -> crews.ask(day)));
        CrewOrdered ordered = one.ordered().orElse(new CrewOrdered(List.of(), one.before(), false));
        return new CrewOrderDocument(
                one.ordered().map(found -> found.orders().text()).orElse(null),
                one.isBetter(),
                ordered.plain(),
                ordered.road(),
                one.before(),
                one.roads().code(),
                ordered.rounds().stream().map(CrewOrderApi::round).toList());
    }

    /** Keeps {@code order} with its {@code shown} road; refused where the day is another by now. */
    @POST
    public Response keep(@PathParam("day") String said, @HeaderParam("Operation-Id") String operation, String body) {
        LocalDate day = DaysApi.day(said);
        return once.answer(operation, "crew order " + day + body, () -> {
            Asked asked = Asked.of(body, json);
            String order = asked.text("order", 60_000);
            int shown = asked.whole("shown", 0, Integer.MAX_VALUE);
            asked.nothingElse().understood();
            return Once.Answer.done(Map.of("day", day, "moved", crews.keep(day, order, shown)));
        });
    }

    private static CrewRound round(CrewOrdered.Round round) {
        Integer lunch = round.lunch();
        return new CrewRound(
                round.technician(),
                Minutes.time(round.leaves()),
                lunch == null ? null : Minutes.time(lunch),
                Minutes.time(round.back()),
                round.road(),
                round.arrivals().stream()
                        .map(one -> new CrewArrival(
                                one.visit(),
                                Minutes.time(one.starts()),
                                Minutes.time(one.ends()),
                                Minutes.time(one.was()),
                                one.whose(),
                                one.stays()))
                        .toList());
    }
}
