package changeover.scheduling.dayplan.season;

import changeover.scheduling.dayplan.routes.Travel;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The places of a season, numbered as they come; homes within a hundred metres of each other are one place, so that a
 * table of all roads stays small.
 */
public final class PlacesOnMap {

    private static final double A_DEGREE = 1000;

    private record Spot(long north, long east) {}

    private final Map<Spot, Integer> numbers = new HashMap<>();
    private final List<Travel.Place> places = new ArrayList<>();

    /** The number of a place, {@link Roads#UNKNOWN} where it is on no map. */
    public int number(@Nullable BigDecimal latitude, @Nullable BigDecimal longitude) {
        if (latitude == null || longitude == null) {
            return Roads.UNKNOWN;
        }
        double north = latitude.doubleValue();
        double east = longitude.doubleValue();
        return numbers.computeIfAbsent(new Spot(Math.round(north * A_DEGREE), Math.round(east * A_DEGREE)), _ -> {
            places.add(new Travel.Place(north, east));
            return places.size() - 1;
        });
    }

    public List<Travel.Place> places() {
        return List.copyOf(places);
    }

    public Roads roads(Travel travel) {
        return Roads.of(places.isEmpty() ? null : travel.between(places));
    }
}
