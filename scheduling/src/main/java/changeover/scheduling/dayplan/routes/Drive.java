package changeover.scheduling.dayplan.routes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A technician's day as it will be driven: every stop begun as early as its hours and the road allow, lunch where the day
 * is over soonest.
 *
 * @param lunchStarts second of the day; null where none is kept
 * @param leaves the last second at which they may leave the base and be in time at the first stop
 * @param back when the turn is over
 * @param travel seconds of driving
 */
public record Drive(
        UUID technician, List<Arrival> arrivals, @Nullable Integer lunchStarts, int leaves, int back, int travel) {

    /**
     * @param starts second of the day
     * @param ends second of the day
     */
    public record Arrival(UUID visit, int starts, int ends) {}

    public Drive {
        arrivals = List.copyOf(arrivals);
    }

    /** The hours of a turn whose stops are driven in this order; empty when some promise of the day would not be kept. */
    static Optional<Drive> of(TravelDay day, Turn turn, List<Stop> order) {
        if (!order.stream().allMatch(turn::may)
                || order.stream().mapToLong(Stop::load).sum() > turn.room()) {
            return Optional.empty();
        }
        // Without a stop there is no road on which lunch could be missed.
        if (turn.lunch() == null || order.isEmpty()) {
            return timed(day, turn, order, OptionalInt.empty());
        }
        return IntStream.rangeClosed(0, order.size())
                .mapToObj(gap -> timed(day, turn, order, OptionalInt.of(gap)))
                .flatMap(Optional::stream)
                .min(Comparator.comparingInt(Drive::back).thenComparingLong(Drive::begins));
    }

    /** Of two days that are over at the same time the one whose stops begin sooner. */
    private long begins() {
        return arrivals.stream().mapToLong(Arrival::starts).sum();
    }

    /** @param gap lunch is taken before the stop of this number, or after the last */
    private static Optional<Drive> timed(TravelDay day, Turn turn, List<Stop> order, OptionalInt gap) {
        List<Arrival> arrivals = new ArrayList<>();
        Integer lunchStarts = null;
        int place = turn.base();
        int free = turn.from();
        int travel = 0;
        for (int number = 0; number <= order.size(); number++) {
            boolean home = number == order.size();
            int next = home ? turn.base() : order.get(number).place();
            int road = day.drives().seconds(place, next);
            int there = free + road;
            if (gap.isPresent() && gap.getAsInt() == number) {
                Lunch lunch = Objects.requireNonNull(turn.lunch());
                lunchStarts = Math.max(free, lunch.earliest());
                if (lunchStarts > lunch.latest()) {
                    return Optional.empty();
                }
                there = Math.max(there, lunchStarts) + lunch.seconds();
            }
            int starts = home ? there : order.get(number).begins(there);
            if (starts > (home ? turn.until() : order.get(number).last())) {
                return Optional.empty();
            }
            travel += road;
            place = next;
            free = home ? starts : starts + order.get(number).seconds();
            if (!home) {
                arrivals.add(new Arrival(order.get(number).visit(), starts, free));
            }
        }
        return Optional.of(new Drive(
                turn.technician(),
                arrivals,
                lunchStarts,
                leaves(day, turn, arrivals, order, lunchStarts),
                free,
                travel));
    }

    private static int leaves(
            TravelDay day, Turn turn, List<Arrival> arrivals, List<Stop> order, @Nullable Integer lunchStarts) {
        if (order.isEmpty()) {
            return turn.from();
        }
        int starts = arrivals.getFirst().starts();
        int leaves = starts - day.drives().seconds(turn.base(), order.getFirst().place());
        Lunch lunch = turn.lunch();
        if (lunch == null || lunchStarts == null || lunchStarts >= starts || leaves >= lunchStarts + lunch.seconds()) {
            return leaves;
        }
        return leaves - lunch.seconds();
    }

    Stream<UUID> visits() {
        return arrivals.stream().map(Arrival::visit);
    }
}
