package changeover.scheduling.dayplan.routes;

import java.time.Duration;
import java.util.List;
import java.util.UUID;

/**
 * A day laid out without any library: promised hours first, every other stop where it costs the least driving, and then
 * the roads made shorter for as long as is allowed.
 *
 * @param shorten how long the roads are worked on after the insertion; zero leaves them
 */
public record InsertedRoutes(Duration shorten) implements Routes {

    @Override
    public DayRoutes of(TravelDay asked) {
        List<UUID> overPromised = asked.overPromised();
        DayFigures day = new DayFigures(asked.without(overPromised));
        ShorterRoads search = new ShorterRoads(day);
        search.begin(day.noOrders());
        List<int[]> orders = search.search(shorten.toNanos(), search.enough());
        return DayRoutes.of(day, orders)
                .orElseThrow(() -> new IllegalStateException("Insertion broke a rule of the day"))
                .besides(overPromised, null);
    }
}
