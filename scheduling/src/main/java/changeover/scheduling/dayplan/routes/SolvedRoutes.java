package changeover.scheduling.dayplan.routes;

import java.time.Duration;
import java.util.List;
import java.util.UUID;

/**
 * A day laid out by the solver in a process of its own; when that gives no answer, or one that breaks a rule of the day,
 * {@link InsertedRoutes} answers and says why. Both answers pass the same check.
 *
 * @param limit how long the solver may search
 */
public final class SolvedRoutes implements Routes {
    /** The reckoning in this process may not hold anybody up for longer. */
    private static final Duration FALLBACK = Duration.ofSeconds(1);

    private final Duration limit;
    private final SolverProcess.Way way;
    private final SolverProcess solver;

    public SolvedRoutes(Duration limit) {
        this(limit, SolverProcess.Way.OURS, new SolverProcess());
    }

    SolvedRoutes(Duration limit, SolverProcess.Way way, SolverProcess solver) {
        this.limit = limit;
        this.way = way;
        this.solver = solver;
    }

    /** The routing library as it stands, to measure against. */
    public static Routes library(Duration limit) {
        return new SolvedRoutes(limit, SolverProcess.Way.LIBRARY, new SolverProcess());
    }

    @Override
    public DayRoutes of(TravelDay asked) {
        List<UUID> overPromised = asked.overPromised();
        DayFigures day = new DayFigures(asked.without(overPromised));
        if (day.stops == 0 || day.turns == 0) {
            return new InsertedRoutes(Duration.ZERO).of(asked);
        }
        try {
            List<int[]> orders = solver.orders(day.asked, way, limit);
            return DayRoutes.of(day, orders)
                    .map(routes -> routes.besides(overPromised, null))
                    .orElseGet(() -> inserted(asked, "The solver's answer broke a rule of the day"));
        } catch (SolverProcess.NoAnswer none) {
            return inserted(asked, String.valueOf(none.getMessage()));
        }
    }

    private DayRoutes inserted(TravelDay asked, String why) {
        DayRoutes routes = new InsertedRoutes(limit.compareTo(FALLBACK) < 0 ? limit : FALLBACK).of(asked);
        return routes.besides(routes.overPromised(), why);
    }
}
