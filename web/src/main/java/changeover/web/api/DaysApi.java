package changeover.web.api;

import changeover.contracts.customers.HomesShut;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.change.DayChanges;
import changeover.scheduling.dayplan.change.DaysInOrder;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.dayplan.change.Ordered;
import changeover.scheduling.dayplan.standing.HourState;
import changeover.scheduling.dayplan.standing.HourStates;
import changeover.web.session.Once;
import changeover.web.session.Typed;
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
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A day of the crew: as it stands, in the order with the least road, and its customers told their hours. */
@Path("/api/v1/{slug}/days/{day}")
@RolesAllowed({"owner", "office"})
public class DaysApi {

    /**
     * @param state as an appointment's document names it: proposed, confirmed, under_way and so on
     * @param shut whether the home is shut on that day
     */
    public record Stop(UUID visit, UUID home, LocalTime starts, LocalTime ends, String state, boolean shut) {}

    public record Round(UUID technician, String name, List<Stop> stops) {}

    /**
     * A technician's day in its better order.
     *
     * @param shown the number that says yes to it; null where no order keeps every hour that stays
     * @param better whether any hour would move by it
     * @param road minutes on the road in this order
     * @param before minutes on the road as it stands
     * @param roads crow, table, or crow_for_table where the table of roads has not answered
     */
    public record Order(
            UUID technician,
            @Nullable Integer shown,
            boolean better,
            int road,
            int before,
            String roads,
            @Nullable LocalTime leaves,
            @Nullable LocalTime lunch,
            @Nullable LocalTime back,
            List<Arrival> arrivals) {}

    /** @param stays the customer was told it, it has begun, or two go there */
    public record Arrival(UUID visit, LocalTime starts, LocalTime ends, LocalTime was, int road, boolean stays) {}

    public record KeptDocument(LocalDate day, UUID technician, List<DayChanges.Move> moved) {}

    @Inject
    HomesShut shut;

    @Inject
    DayPlans plans;

    @Inject
    HourStates states;

    @Inject
    DaysInOrder orders;

    @Inject
    HoursTold told;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Everybody who works then or has a stop. */
    @GET
    @Transactional
    public List<Round> rounds(@PathParam("day") String said) {
        LocalDate day = day(said);
        List<DayPlan> all = plans.of(day);
        Map<UUID, HourState> known = states.of(all.stream()
                .flatMap(plan -> plan.stops().stream())
                .map(DayPlan.Stop::visitId)
                .toList());
        Set<UUID> closed = shut.on(
                        all.stream()
                                .flatMap(plan -> plan.stops().stream())
                                .map(DayPlan.Stop::homeId)
                                .toList(),
                        day)
                .keySet();
        return all.stream().map(plan -> round(plan, known, closed)).toList();
    }

    private static Round round(DayPlan plan, Map<UUID, HourState> known, Set<UUID> shut) {
        return new Round(
                plan.technicianId(),
                plan.technician(),
                plan.stops().stream()
                        .map(stop -> new Stop(
                                stop.visitId(),
                                stop.homeId(),
                                stop.starts(),
                                stop.ends(),
                                known.getOrDefault(stop.visitId(), HourState.PROPOSED)
                                        .code(),
                                shut.contains(stop.homeId())))
                        .toList());
    }

    /** The order with the least road of everybody who has a visit; nothing moves before somebody keeps one. */
    @GET
    @Path("orders")
    @Transactional
    public List<Order> orders(@PathParam("day") String said) {
        return orders.on(day(said)).stream().map(DaysApi::order).toList();
    }

    /** Keeps an order: {@code technician} and the {@code shown} of what was looked at; refused where it is another by now. */
    @POST
    @Path("orders")
    public Response keep(@PathParam("day") String said, @HeaderParam("Operation-Id") String operation, String body) {
        LocalDate day = day(said);
        return once.answer(operation, "day order " + day + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID technician = asked.id("technician");
            int shown = asked.whole("shown", 0, Integer.MAX_VALUE);
            asked.nothingElse().understood();
            return Once.Answer.done(new KeptDocument(day, technician, orders.keep(day, technician, shown)));
        });
    }

    /** Every customer of the day was told their hour. */
    @POST
    @Path("told")
    public Response tellAll(@PathParam("day") String said, @HeaderParam("Operation-Id") String operation, String body) {
        LocalDate day = day(said);
        return once.answer(operation, "day told " + day + body, () -> {
            Asked.of(body, json).nothingElse().understood();
            return Once.Answer.done(Map.of("day", day, "told", told.tellAll(day)));
        });
    }

    /** What is no day is not found. */
    static LocalDate day(String said) {
        try {
            return Typed.readDay(said);
        } catch (DateTimeException notADay) {
            throw new NotFoundException();
        }
    }

    private static Order order(DaysInOrder.Proposed one) {
        Ordered ordered = one.ordered().orElse(null);
        if (ordered == null) {
            return new Order(
                    one.day().technician(),
                    null,
                    false,
                    one.before(),
                    one.before(),
                    one.roads().code(),
                    null,
                    null,
                    null,
                    List.of());
        }
        Integer lunch = ordered.lunch();
        return new Order(
                one.day().technician(),
                one.shown(),
                one.isBetter(),
                ordered.road(),
                one.before(),
                one.roads().code(),
                Minutes.time(ordered.leaves()),
                lunch == null ? null : Minutes.time(lunch),
                Minutes.time(ordered.back()),
                ordered.arrivals().stream()
                        .map(arrival -> new Arrival(
                                arrival.visit(),
                                Minutes.time(arrival.starts()),
                                Minutes.time(arrival.ends()),
                                Minutes.time(arrival.was()),
                                arrival.road(),
                                arrival.stays()))
                        .toList());
    }
}
