package changeover.scheduling.dayplan.routes;

import java.math.BigDecimal;
import java.util.List;

/**
 * Driving reckoned without a map: the great circle, lengthened by what roads go round, at one speed. The mean radius of
 * the earth is 6,371.0088 km (IUGG, GRS 80).
 *
 * @param detourPercent the road's length over the straight line's; 130 is three tenths longer
 * @param kilometresAnHour the speed from door to door
 */
public record AsTheCrowFlies(int detourPercent, int kilometresAnHour) implements Travel {

    private static final double RADIUS_METRES = 6_371_008.8;

    /** Streets of a town and the country around it: three tenths longer, at 45 km/h. */
    public static final AsTheCrowFlies USUAL = new AsTheCrowFlies(130, 45);

    public AsTheCrowFlies {
        if (detourPercent < 100 || kilometresAnHour <= 0) {
            throw new IllegalArgumentException(
                    "A road is no shorter than the straight line, and a speed is above zero");
        }
    }

    @Override
    public Drives between(List<Place> places) {
        int[][] seconds = new int[places.size()][places.size()];
        for (int from = 0; from < places.size(); from++) {
            for (int to = 0; to < from; to++) {
                seconds[from][to] = seconds(places.get(from), places.get(to));
                seconds[to][from] = seconds[from][to];
            }
        }
        return Drives.of(seconds);
    }

    private int seconds(Place from, Place to) {
        double metres = metres(from, to) * detourPercent / 100;
        return (int) Math.ceil(metres * 3600 / (kilometresAnHour * 1000.0));
    }

    /** The straight line between two points of the earth in whole metres; degrees north and east are above zero. */
    public static long metres(
            BigDecimal fromLatitude, BigDecimal fromLongitude, BigDecimal toLatitude, BigDecimal toLongitude) {
        return Math.round(metres(
                new Place(fromLatitude.doubleValue(), fromLongitude.doubleValue()),
                new Place(toLatitude.doubleValue(), toLongitude.doubleValue())));
    }

    /** The haversine of the angle between the two, which stays exact for neighbours. */
    static double metres(Place from, Place to) {
        double north = Math.toRadians(to.latitude() - from.latitude());
        double east = Math.toRadians(to.longitude() - from.longitude());
        double half = Math.pow(Math.sin(north / 2), 2)
                + Math.cos(Math.toRadians(from.latitude()))
                        * Math.cos(Math.toRadians(to.latitude()))
                        * Math.pow(Math.sin(east / 2), 2);
        return 2 * RADIUS_METRES * Math.asin(Math.min(1, Math.sqrt(half)));
    }
}
