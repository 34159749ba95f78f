package changeover.scheduling.dayplan.change;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import changeover.scheduling.dayplan.routes.DayRoutes;
import changeover.scheduling.dayplan.routes.Drive;
import changeover.scheduling.dayplan.routes.Routes;
import changeover.scheduling.dayplan.season.Roads;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A technician's day driven in the order with the least road: what stays keeps its hour, everything else begins within its
 * own and not before it can be reached from now on, with a lunch, out from the base and back.
 *
 * @param lunch minute at which it begins; null where none is kept
 * @param leaves minute by which they must leave the base
 * @param back minute
 * @param road minutes on the road
 */
public record Ordered(List<Arrival> arrivals, @Nullable Integer lunch, int leaves, int back, int road) {

    private static final int MINUTE = 60;

    /**
     * @param starts minute
     * @param ends minute
     * @param was minute at which it began before
     */
    public record Arrival(UUID visit, int starts, int ends, int was, int road, boolean stays) {}

    /**
     * What has begun is driven already: the rest is put in order from where they are now. Empty where the hours that stay cannot
     * all be driven to, or something would be left out.
     */
    public static Optional<Ordered> of(HeldDay day, Roads roads, Routes routes) {
        int begun = day.begun();
        List<Arrival> arrivals = new ArrayList<>();
        day.held().subList(0, begun).forEach(held -> arrivals.add(arrival(day, held, held.starts(), arrivals, roads)));
        if (begun == day.held().size()) {
            return Optional.of(new Ordered(arrivals, null, leaves(day, roads), day.back(roads), day.road(roads)));
        }
        DaysAsked asked = DaysAsked.of(List.of(day), roads);
        DayRoutes answer = routes.of(asked.day());
        if (!answer.leftOut().isEmpty() || answer.drives().size() != 1) {
            return Optional.empty();
        }
        Drive drive = answer.drives().getFirst();
        for (Drive.Arrival one : drive.arrivals()) {
            int starts = (one.starts() + MINUTE - 1) / MINUTE;
            Held held = Objects.requireNonNull(asked.theirs().get(one.visit())).held();
            arrivals.add(arrival(day, held, starts, arrivals, roads));
        }
        Integer lunch = drive.lunchStarts();
        return Optional.of(new Ordered(
                arrivals,
                lunch == null ? null : lunch / MINUTE,
                begun == 0 ? drive.leaves() / MINUTE : leaves(day, roads),
                drive.back() / MINUTE,
                arrivals.subList(0, begun).stream().mapToInt(Arrival::road).sum() + drive.travel() / MINUTE));
    }

    private static Arrival arrival(HeldDay day, Held held, int starts, List<Arrival> before, Roads roads) {
        int here = before.isEmpty()
                ? day.base()
                : held(day, before.getLast().visit()).place();
        return new Arrival(
                held.visit(),
                starts,
                starts + held.minutes(),
                held.starts(),
                roads.minutes(here, held.place()),
                held.stays());
    }

    private static Held held(HeldDay day, UUID visit) {
        return day.held().stream()
                .filter(other -> other.visit().equals(visit))
                .findFirst()
                .orElseThrow();
    }

    private static int leaves(HeldDay day, Roads roads) {
        return day.held().isEmpty()
                ? day.from()
                : day.held().getFirst().starts()
                        - roads.minutes(day.base(), day.held().getFirst().place());
    }
}
