package changeover.scheduling.dayplan.routes;

import java.util.List;

/** How long it takes from home to home; a table of roads where one is at hand, else {@link AsTheCrowFlies}. */
@FunctionalInterface
public interface Travel {

    /**
     * At once, from what is known here: somebody outside is never asked, since a business transaction may be open.
     *
     * @return drives that number the places as they stand in the list
     */
    Drives between(List<Place> places);

    /** Asks outside for what is not known yet, for some seconds at most; never called inside a transaction. */
    default void prepare(List<Place> places) {}

    /** The same roads, and those that are not known here reckoned at this pace. */
    default Travel elseBy(AsTheCrowFlies crow) {
        return this;
    }

    /**
     * A point of the earth, in degrees.
     *
     * @param latitude north is above zero
     * @param longitude east is above zero
     */
    record Place(double latitude, double longitude) {

        public Place {
            if (!(Math.abs(latitude) <= 90) || !(Math.abs(longitude) <= 180)) {
                throw new IllegalArgumentException("No place lies at %s, %s".formatted(latitude, longitude));
            }
        }
    }
}
