package changeover.scheduling.dayplan.routes;

import com.google.ortools.constraintsolver.Assignment;
import com.google.ortools.constraintsolver.FirstSolutionStrategy;
import com.google.ortools.constraintsolver.IntVar;
import com.google.ortools.constraintsolver.IntervalVar;
import com.google.ortools.constraintsolver.LocalSearchMetaheuristic;
import com.google.ortools.constraintsolver.RoutingDimension;
import com.google.ortools.constraintsolver.RoutingIndexManager;
import com.google.ortools.constraintsolver.RoutingModel;
import com.google.ortools.constraintsolver.RoutingSearchParameters;
import com.google.ortools.constraintsolver.main;
import com.google.protobuf.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A travel day told to the routing library, which is native code, loaded beforehand: only {@link SolverChild} asks it. */
final class RoadSolver {
    private static final String HOURS = "hours";

    private final DayFigures day;
    private final int[] bases;
    private final RoutingIndexManager numbers;
    private final RoutingModel model;
    private final RoutingDimension hours;

    RoadSolver(DayFigures day) {
        this.day = day;
        bases = Arrays.stream(day.base).distinct().toArray();
        int[] ends = Arrays.stream(day.base)
                .map(base -> day.stops + Arrays.stream(bases).boxed().toList().indexOf(base))
                .toArray();
        numbers = new RoutingIndexManager(day.stops + bases.length, day.turns, ends, ends);
        model = new RoutingModel(numbers);
        hours = tellRoads();
        tellStops();
        tellTurns();
    }

    /** The nodes are the stops, then the bases. */
    private RoutingDimension tellRoads() {
        int nodes = day.stops + bases.length;
        long[][] road = new long[nodes][nodes];
        long[][] time = new long[nodes][nodes];
        for (int from = 0; from < nodes; from++) {
            for (int to = 0; to < nodes; to++) {
                road[from][to] = day.drive[placeOf(from)][placeOf(to)];
                time[from][to] = road[from][to] + secondsAt(from);
            }
        }
        model.setArcCostEvaluatorOfAllVehicles(model.registerTransitMatrix(road));
        long end = Arrays.stream(day.until).max().orElse(0);
        model.addDimension(model.registerTransitMatrix(time), end, end, false, HOURS);
        long[] load = new long[nodes];
        for (int stop = 0; stop < day.stops; stop++) {
            load[stop] = day.load[stop];
        }
        model.addDimensionWithVehicleCapacity(
                model.registerUnaryTransitVector(load),
                0,
                Arrays.stream(day.room).asLongStream().toArray(),
                true,
                "load");
        return model.getMutableDimension(HOURS);
    }

    private int placeOf(int node) {
        return node < day.stops ? day.place[node] : bases[node - day.stops];
    }

    private int secondsAt(int node) {
        return node < day.stops ? day.seconds[node] : 0;
    }

    private void tellStops() {
        for (int stop = 0; stop < day.stops; stop++) {
            long number = numbers.nodeToIndex(stop);
            hours.cumulVar(number).setRange(day.earliest[stop], day.latest[stop]);
            IntVar who = model.vehicleVar(number);
            for (int turn = 0; turn < day.turns; turn++) {
                if (!day.may[stop][turn]) {
                    who.removeValue(turn);
                }
            }
            if (!day.promised[stop]) {
                model.addDisjunction(new long[] {number}, 1_000_000_000L);
            }
        }
    }

    private void tellTurns() {
        long[] atHome = IntStream.range(0, Math.toIntExact(model.size()))
                .mapToLong(index -> secondsAt(numbers.indexToNode(index)))
                .toArray();
        for (int turn = 0; turn < day.turns; turn++) {
            hours.cumulVar(model.start(turn)).setRange(day.from[turn], day.until[turn]);
            hours.cumulVar(model.end(turn)).setRange(day.from[turn], day.until[turn]);
            @Nullable Lunch lunch = day.lunch[turn];
            if (lunch != null) {
                IntervalVar pause = model.solver()
                        .makeFixedDurationIntervalVar(
                                lunch.earliest(), lunch.latest(), lunch.seconds(), false, "lunch " + turn);
                hours.setBreakIntervalsOfVehicle(new IntervalVar[] {pause}, turn, atHome);
            }
        }
    }

    /** The library as it stands: its own choice of a first solution, then its guided search for the whole time. */
    Optional<List<int[]>> plain(long milliseconds) {
        return solve(FirstSolutionStrategy.Value.AUTOMATIC, milliseconds);
    }

    Optional<List<int[]>> solve(long milliseconds) {
        return solve(FirstSolutionStrategy.Value.PARALLEL_CHEAPEST_INSERTION, milliseconds);
    }

    private Optional<List<int[]>> solve(FirstSolutionStrategy.Value first, long milliseconds) {
        RoutingSearchParameters search = main.defaultRoutingSearchParameters().toBuilder()
                .setFirstSolutionStrategy(first)
                .setLocalSearchMetaheuristic(LocalSearchMetaheuristic.Value.GUIDED_LOCAL_SEARCH)
                .setTimeLimit(Duration.newBuilder()
                        .setSeconds(milliseconds / 1000)
                        .setNanos((int) (milliseconds % 1000) * 1_000_000))
                .build();
        Assignment found = model.solveWithParameters(search);
        return Optional.ofNullable(found).map(this::orders);
    }

    private List<int[]> orders(Assignment found) {
        List<int[]> orders = new ArrayList<>();
        for (int turn = 0; turn < day.turns; turn++) {
            IntStream.Builder order = IntStream.builder();
            long at = found.value(model.nextVar(model.start(turn)));
            while (!model.isEnd(at)) {
                order.add(numbers.indexToNode(at));
                at = found.value(model.nextVar(at));
            }
            orders.add(order.build().toArray());
        }
        return orders;
    }
}
