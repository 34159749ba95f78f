package changeover.scheduling.dayplan.routes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The answer of one day.
 *
 * @param drives one for each technician whose hours can be kept, as the day lists them
 * @param leftOut visits that nobody's turn has room for
 * @param overPromised technicians whose promised hours cannot all be kept; nothing was planned for them, and what was
 *     promised in their name stands as it is
 * @param fellBack why the solver gave no answer and plain insertion did; null when the solver answered
 */
public record DayRoutes(
        List<Drive> drives,
        List<UUID> leftOut,
        List<UUID> overPromised,
        @Nullable String fellBack) {

    public DayRoutes {
        drives = List.copyOf(drives);
        leftOut = List.copyOf(leftOut);
        overPromised = List.copyOf(overPromised);
    }

    /** Seconds of driving of the whole crew. */
    public long travel() {
        return drives.stream().mapToLong(Drive::travel).sum();
    }

    /** The hours of a day driven in these orders; empty when a rule of the day would be broken anywhere. */
    static Optional<DayRoutes> of(DayFigures day, List<int[]> orders) {
        List<Drive> drives = new ArrayList<>();
        Set<UUID> visited = new HashSet<>();
        for (int turn = 0; turn < day.turns; turn++) {
            Optional<Drive> drive = day.drive(turn, orders.get(turn));
            if (drive.isEmpty() || !drive.get().visits().allMatch(visited::add)) {
                return Optional.empty();
            }
            drives.add(drive.get());
        }
        List<Stop> leftOut = day.asked.stops().stream()
                .filter(stop -> !visited.contains(stop.visit()))
                .toList();
        if (leftOut.stream().anyMatch(stop -> stop.promised() != null)) {
            return Optional.empty();
        }
        return Optional.of(
                new DayRoutes(drives, leftOut.stream().map(Stop::visit).toList(), List.of(), null));
    }

    DayRoutes besides(List<UUID> technicians, @Nullable String why) {
        return new DayRoutes(drives, leftOut, technicians, why);
    }
}
