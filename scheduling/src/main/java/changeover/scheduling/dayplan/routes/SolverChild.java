package changeover.scheduling.dayplan.routes;

import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The solver's own process: reads a day, writes the orders of its stops, ends. The routing library finds a first answer
 * under all the rules, and {@link ShorterRoads} has the rest of the time to beat it.
 */
final class SolverChild {
    /** The library gets one part in so many of the time, and no more than so much. */
    private static final int PART = 20;

    private static final long AT_MOST_MILLIS = 1000;

    private SolverChild() {}

    /** @param words the native library, the way, and the milliseconds */
    public static void main(String[] words) throws IOException {
        FileOutputStream pipe = new FileOutputStream(FileDescriptor.out);
        System.setOut(System.err);
        TravelDay day = DayBytes.read(new DataInputStream(System.in));
        pipe.write(DayBytes.BEGUN);
        System.load(words[0]);
        long millis = Long.parseLong(words[2]);
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
        DayFigures figures = new DayFigures(day);
        List<int[]> orders = switch (SolverProcess.Way.valueOf(words[1])) {
            case OURS -> ours(figures, millis, until);
            case LIBRARY ->
                new RoadSolver(figures)
                        .plain(millis)
                        .orElseThrow(() -> new IllegalStateException("the library found no order in its time"));
        };
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(pipe))) {
            DayBytes.writeOrders(orders, out);
        }
    }

    private static List<int[]> ours(DayFigures figures, long millis, long until) {
        long part = Math.max(1, Math.min(AT_MOST_MILLIS, millis / PART));
        Optional<List<int[]>> first = new RoadSolver(figures).solve(part);
        ShorterRoads search = new ShorterRoads(figures);
        search.beginBeside(first.orElseGet(figures::noOrders));
        return search.search(until - System.nanoTime(), search.enough());
    }
}
