package changeover.deploy.bench;

import changeover.scheduling.dayplan.routes.DayRoutes;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.SolvedRoutes;
import changeover.scheduling.dayplan.routes.Stop;
import changeover.scheduling.dayplan.routes.TravelDay;
import changeover.scheduling.dayplan.routes.Turn;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;

/**
 * Days of routes as the product lays them out, held against the best known distances of published cases; beside each, in
 * the same run and for the same time, the routing library as it stands. Each searches in one thread.
 */
final class RoutesBench {
    private final RoutesOptions options;
    private final BestKnown known;
    private final RouteGaps toBest = new RouteGaps();
    private final RouteGaps toLibrary = new RouteGaps();
    private int infeasible;

    private RoutesBench(RoutesOptions options) throws IOException {
        this.options = options;
        this.known = BestKnown.table();
    }

    /** The last line; empty when a sentence on standard error has said why there is none. */
    static Optional<String> run(List<String> words) throws IOException {
        try {
            RoutesOptions options = RoutesOptions.of(words);
            return Optional.of(new RoutesBench(options).measure(options.cases()));
        } catch (RoutesOptions.NotUnderstood sentence) {
            System.err.println(sentence.getMessage());
            return Optional.empty();
        }
    }

    private String measure(Map<String, SolomonFile> cases) throws IOException {
        for (Map.Entry<String, SolomonFile> one : cases.entrySet()) {
            measure(one.getKey(), one.getValue());
        }
        boolean published = !toBest.isEmpty();
        if (!published && !toLibrary.isEmpty()) {
            System.out.println(
                    "No best known distance is on record for these figures: the gaps below are to the routing library in this run.");
        }
        return (published ? toBest : toLibrary).line(cases.size(), infeasible);
    }

    private void measure(String file, SolomonFile solomon) throws IOException {
        TravelDay day = day(solomon);
        DayRoutes ours = new SolvedRoutes(options.limit()).of(day);
        DayRoutes library = SolvedRoutes.library(options.limit()).of(day);
        List<List<Integer>> routes = routes(ours);
        SolomonCheck check = SolomonCheck.of(solomon, routes);
        SolomonCheck plain = SolomonCheck.of(solomon, routes(library));
        boolean libraryAnswered = library.fellBack() == null && plain.broken().isEmpty();
        Optional<Long> best = known.of(solomon);
        if (check.broken().isPresent()) {
            infeasible++;
        } else {
            best.ifPresent(tenths -> toBest.add(RouteGaps.gap(check.tenths(), tenths)));
            if (libraryAnswered) {
                toLibrary.add(RouteGaps.gap(check.tenths(), plain.tenths()));
            }
        }
        System.out.println("%s customers=%d vehicles=%d distance=%s %s library=%s %s"
                .formatted(
                        file,
                        solomon.customers(),
                        routes.size(),
                        shown(check.tenths()),
                        best.map(tenths -> against(check, tenths)).orElse("best_known=none"),
                        libraryAnswered ? shown(plain.tenths()) : "none",
                        check.broken().map(why -> "infeasible: " + why).orElse("feasible")));
        if (ours.fellBack() != null) {
            System.out.println("  by insertion: " + ours.fellBack());
        }
        if (options.out().isPresent()) {
            write(options.out().get().resolve(file + ".routes"), routes);
        }
    }

    private static String against(SolomonCheck check, long best) {
        return "best_known=%s gap=%s".formatted(shown(best), RouteGaps.shown(RouteGaps.gap(check.tenths(), best)));
    }

    private static String shown(long tenths) {
        return BigDecimal.valueOf(tenths, 1).toPlainString();
    }

    /** A tenth of a unit of distance stands for a second of the day. */
    private static TravelDay day(SolomonFile solomon) {
        int count = solomon.places().size();
        int[][] drives = new int[count][count];
        for (int from = 0; from < count; from++) {
            for (int to = 0; to < from; to++) {
                drives[from][to] = solomon.tenths(from, to);
                drives[to][from] = drives[from][to];
            }
        }
        SolomonFile.Place base = solomon.places().getFirst();
        List<Stop> stops = IntStream.range(1, count)
                .mapToObj(number -> stop(number, solomon.places().get(number)))
                .toList();
        List<Turn> turns = IntStream.rangeClosed(1, solomon.vehicles())
                .mapToObj(van -> new Turn(
                        new UUID(1, van), 0, base.ready() * 10, base.due() * 10, Set.of(), solomon.room(), null))
                .toList();
        return new TravelDay(turns, stops, Drives.of(drives));
    }

    private static Stop stop(int number, SolomonFile.Place place) {
        return new Stop(
                new UUID(0, number),
                number,
                place.ready() * 10,
                place.due() * 10,
                place.service() * 10,
                Set.of(),
                place.demand(),
                null);
    }

    private static List<List<Integer>> routes(DayRoutes answer) {
        return answer.drives().stream()
                .filter(drive -> !drive.arrivals().isEmpty())
                .map(drive -> drive.arrivals().stream()
                        .map(arrival -> (int) arrival.visit().getLeastSignificantBits())
                        .toList())
                .toList();
    }

    /** One line a route: the customers' numbers in order. */
    private static void write(Path file, List<List<Integer>> routes) throws IOException {
        List<String> lines = new ArrayList<>();
        routes.forEach(route ->
                lines.add(String.join(" ", route.stream().map(String::valueOf).toList())));
        Files.write(file, lines);
    }
}
