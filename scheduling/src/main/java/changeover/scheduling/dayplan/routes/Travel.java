package changeover.scheduling.dayplan.routes;

import java.util.List;

/** How long it takes from home to home; a table of roads where one is at hand, else {@link AsTheCrowFlies}. */
@FunctionalInterface
public interface Travel {

    /** @return drives that number the places as they stand in the list */
    Drives between(List<Place> places);

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
