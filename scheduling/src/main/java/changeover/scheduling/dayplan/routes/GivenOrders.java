package changeover.scheduling.dayplan.routes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A day driven in orders that were found before: nothing is searched, everything is reckoned and checked anew.
 *
 * @param visits by technician, in the order of their day
 */
public record GivenOrders(Map<UUID, List<UUID>> visits) implements Routes {

    public GivenOrders {
        visits = Collections.unmodifiableMap(new LinkedHashMap<>(visits));
    }

    /** A technician's id and those of their stops, in one line; a comma before the next technician. */
    public String text() {
        return visits.entrySet().stream()
                .map(theirs -> Stream.concat(Stream.of(theirs.getKey()), theirs.getValue().stream())
                        .map(UUID::toString)
                        .collect(Collectors.joining(" ")))
                .collect(Collectors.joining(","));
    }

    /** @throws IllegalArgumentException when it is no such text */
    public static GivenOrders read(String text) {
        Map<UUID, List<UUID>> orders = new LinkedHashMap<>();
        for (String theirs : text.split(",")) {
            List<UUID> ids =
                    Stream.of(theirs.strip().split(" ")).map(UUID::fromString).toList();
            orders.put(ids.getFirst(), ids.subList(1, ids.size()));
        }
        return new GivenOrders(orders);
    }

    /** Everything is left out where the orders name what the day does not hold, or break a rule of it. */
    @Override
    public DayRoutes of(TravelDay asked) {
        List<UUID> overPromised = asked.overPromised();
        TravelDay day = asked.without(overPromised);
        Map<UUID, Integer> numbers = new HashMap<>();
        day.stops().forEach(stop -> numbers.put(stop.visit(), numbers.size()));
        List<int[]> orders = new ArrayList<>();
        boolean known = true;
        for (Turn turn : day.turns()) {
            List<UUID> order = visits.getOrDefault(turn.technician(), List.of());
            known &= numbers.keySet().containsAll(order);
            orders.add(order.stream()
                    .filter(numbers::containsKey)
                    .mapToInt(numbers::get)
                    .toArray());
        }
        var nothing = new DayRoutes(List.of(), List.copyOf(numbers.keySet()), overPromised, null);
        return known
                ? DayRoutes.of(new DayFigures(day), orders)
                        .map(routes -> routes.besides(overPromised, null))
                        .orElse(nothing)
                : nothing;
    }
}
