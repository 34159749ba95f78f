package changeover.scheduling.dayplan.routes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class AsTheCrowFliesTest {

    /** On a sphere a degree of a great circle is the radius times pi over 180: 111,195.08 m. */
    @Test
    void a_degree_of_a_great_circle_is_known() {
        check(45, -73, 46, -73, 111_195);
        check(0, 10, 0, 11, 111_195);
        check(0, 179.5, 0, -179.5, 111_195);
        check(89.5, 0, 89.5, 180, 111_195);
        check(0, 0, 0, 180, 20_015_114);
        check(45.5, -73.6, 45.5, -73.6, 0);
    }

    @Test
    void a_road_is_longer_than_the_line_and_driven_at_one_speed() {
        var places = List.of(new Travel.Place(45, -73), new Travel.Place(46, -73));
        // 111,195.08 m, three tenths longer, at 45 km/h: 11,564.29 s, begun seconds counted whole.
        assertEquals(11_565, AsTheCrowFlies.USUAL.between(places).seconds(0, 1));
        assertEquals(11_565, AsTheCrowFlies.USUAL.between(places).seconds(1, 0));
        assertEquals(0, AsTheCrowFlies.USUAL.between(places).seconds(1, 1));
        assertEquals(4_004, new AsTheCrowFlies(100, 100).between(places).seconds(0, 1));
    }

    @Test
    void no_place_lies_off_the_earth() {
        assertThrows(IllegalArgumentException.class, () -> new Travel.Place(91, 0));
        assertThrows(IllegalArgumentException.class, () -> new Travel.Place(0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new AsTheCrowFlies(99, 45));
    }

    private static void check(double fromNorth, double fromEast, double toNorth, double toEast, long metres) {
        assertEquals(
                metres,
                Math.round(AsTheCrowFlies.metres(
                        new Travel.Place(fromNorth, fromEast), new Travel.Place(toNorth, toEast))));
    }
}
