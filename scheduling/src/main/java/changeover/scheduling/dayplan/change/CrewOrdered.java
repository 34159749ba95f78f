package changeover.scheduling.dayplan.change;

import changeover.scheduling.dayplan.routes.DayRoutes;
import changeover.scheduling.dayplan.routes.Drive;
import changeover.scheduling.dayplan.routes.GivenOrders;
import changeover.scheduling.dayplan.routes.Routes;
import changeover.scheduling.dayplan.season.Roads;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A day laid anew over the whole crew with the least road: whoever was told an hour keeps it and whoever comes, every other
 * visit goes to somebody who holds its tickets, within its own hours.
 *
 * @param road minutes on the road of all of them
 * @param plain whether the solver gave no answer and the plain reckoning did
 */
public record CrewOrdered(List<Round> rounds, int road, boolean plain) {

    private static final int MINUTE = 60;

    /**
     * One technician's day.
     *
     * @param leaves minute by which they must leave the base
     * @param back minute
     * @param lunch minute at which it begins; null where none is kept
     */
    public record Round(
            UUID technician,
            List<Arrival> arrivals,
            int leaves,
            int back,
            @Nullable Integer lunch,
            int road) {}

    /**
     * @param whose had it before
     * @param was minute at which it began before
     */
    public record Arrival(UUID id, UUID visit, int starts, int ends, UUID whose, int was, boolean stays) {}

    public CrewOrdered {
        rounds = List.copyOf(rounds);
    }

    /** Empty where somebody's promised hours cannot all be driven to, or something would be left out. */
    public static Optional<CrewOrdered> of(List<HeldDay> crew, Roads roads, Routes routes) {
        DaysAsked asked = DaysAsked.of(crew, roads);
        DayRoutes answer = routes.of(asked.day());
        if (!answer.leftOut().isEmpty() || answer.drives().size() != crew.size()) {
            return Optional.empty();
        }
        List<Round> rounds = answer.drives().stream()
                .map(drive -> round(drive, asked.theirs()))
                .toList();
        return Optional.of(
                new CrewOrdered(rounds, rounds.stream().mapToInt(Round::road).sum(), answer.fellBack() != null));
    }

    private static Round round(Drive drive, Map<UUID, DaysAsked.Theirs> theirs) {
        List<Arrival> arrivals = new ArrayList<>();
        for (Drive.Arrival one : drive.arrivals()) {
            DaysAsked.Theirs now = theirs.get(one.visit());
            if (now != null) {
                int starts = (one.starts() + MINUTE - 1) / MINUTE;
                arrivals.add(new Arrival(
                        one.visit(),
                        now.held().visit(),
                        starts,
                        starts + now.held().minutes(),
                        now.technician(),
                        now.held().starts(),
                        now.held().stays()));
            }
        }
        Integer lunch = drive.lunchStarts();
        return new Round(
                drive.technician(),
                arrivals,
                drive.leaves() / MINUTE,
                drive.back() / MINUTE,
                lunch == null ? null : lunch / MINUTE,
                drive.travel() / MINUTE);
    }

    /** What finds the same day again. */
    public GivenOrders orders() {
        Map<UUID, List<UUID>> orders = new LinkedHashMap<>();
        rounds.forEach(round -> orders.put(
                round.technician, round.arrivals.stream().map(Arrival::id).toList()));
        return new GivenOrders(orders);
    }

    /** What would be otherwise than it stands, by whose day it goes to. */
    public Map<UUID, List<Arrival>> moved() {
        Map<UUID, List<Arrival>> moved = new LinkedHashMap<>();
        rounds.forEach(round -> moved.put(
                round.technician,
                round.arrivals.stream()
                        .filter(one -> !one.stays && (one.starts != one.was || !one.whose.equals(round.technician)))
                        .toList()));
        moved.values().removeIf(List::isEmpty);
        return moved;
    }
}
