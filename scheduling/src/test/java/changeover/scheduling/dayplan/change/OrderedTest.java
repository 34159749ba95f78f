package changeover.scheduling.dayplan.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.InsertedRoutes;
import changeover.scheduling.dayplan.routes.Routes;
import changeover.scheduling.dayplan.season.Roads;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Days put in order on a straight road with a place every ten minutes. */
class OrderedTest {

    private static final UUID IDA = new UUID(1, 1);
    private static final Routes ROUTES = new InsertedRoutes(Duration.ofMillis(20));
    private static final Roads ROADS = Roads.of(Drives.of(IntStream.range(0, 12)
            .mapToObj(from ->
                    IntStream.range(0, 12).map(to -> 600 * Math.abs(from - to)).toArray())
            .toArray(int[][]::new)));

    private static int at(String hour) {
        return LocalTime.parse(hour).toSecondOfDay() / 60;
    }

    private static Held held(int number, String starts, int place, boolean stays) {
        return new Held(new UUID(2, number), at(starts), at(starts) + 60, place, Set.of(), stays, stays, 0, 24 * 60, 1);
    }

    private static HeldDay day(String now, Held... held) {
        return new HeldDay(IDA, Set.of(), 0, 480, 1080, 30, at(now), false, List.of(held));
    }

    @Test
    void what_has_begun_stays_and_the_rest_is_reached_from_there() {
        HeldDay day = day("12:30", held(1, "08:30", 2, true), held(2, "13:40", 1, false), held(3, "16:10", 9, false));
        Ordered ordered = Ordered.of(day, ROADS, ROUTES).orElseThrow();
        assertEquals(at("08:30"), ordered.arrivals().getFirst().starts());
        assertTrue(ordered.arrivals().stream().skip(1).allMatch(one -> one.starts() > at("12:30")), "" + ordered);
        assertEquals(at("13:40"), ordered.arrivals().get(1).starts(), "seventy minutes from where they are now");
        assertEquals(at("16:00"), ordered.arrivals().get(2).starts());
        assertEquals(at("08:10"), ordered.leaves());
        assertNull(ordered.lunch(), "they were idle at noon");
        assertEquals(180, ordered.road());
    }

    @Test
    void a_morning_that_is_over_is_no_room_for_the_afternoon() {
        HeldDay day = day("13:00", held(1, "14:30", 3, false), held(2, "15:40", 6, true));
        Ordered ordered = Ordered.of(day, ROADS, ROUTES).orElseThrow();
        assertEquals(at("13:30"), ordered.arrivals().getFirst().starts());
        assertEquals(at("15:40"), ordered.arrivals().getLast().starts());
        assertEquals(
                at("08:30"),
                Ordered.of(day("00:00", held(1, "14:30", 3, false)), ROADS, ROUTES)
                        .orElseThrow()
                        .arrivals()
                        .getFirst()
                        .starts());
    }

    @Test
    void a_day_that_is_over_stands_as_it_was() {
        HeldDay day = day("23:59", held(1, "09:00", 3, false), held(2, "11:00", 6, false));
        Ordered ordered = Ordered.of(day, ROADS, ROUTES).orElseThrow();
        assertFalse(ordered.arrivals().stream().anyMatch(one -> one.starts() != one.was()));
        assertEquals(120, ordered.road());
    }

    @Test
    void a_lunch_that_was_not_had_is_still_had() {
        HeldDay day = day("11:10", held(1, "08:30", 2, true), held(2, "11:00", 2, true), held(3, "13:40", 3, false));
        Ordered ordered = Ordered.of(day, ROADS, ROUTES).orElseThrow();
        assertTrue(Objects.requireNonNull(ordered.lunch()) >= at("12:00"), "" + ordered);
    }

    /** Random days at random minutes: every proposed hour can be driven to from where they are now. */
    @Test
    void no_order_begins_anything_before_it_can_be_reached() {
        var random = new Random(5);
        int found = 0;
        for (int trial = 0; trial < 150; trial++) {
            int now = 60 * 8 + 5 * random.nextInt(90);
            var held = new Held[1 + random.nextInt(4)];
            int free = 480;
            int here = 0;
            for (int number = 0; number < held.length; number++) {
                int place = random.nextInt(12);
                int starts = free + ROADS.minutes(here, place) + 5 * random.nextInt(8);
                boolean stays = starts < now || random.nextInt(3) == 0;
                held[number] = new Held(
                        new UUID(2, number), starts, starts + 30, place, Set.of(), stays, stays, 0, 24 * 60, 1);
                free = starts + 30;
                here = place;
            }
            var day = new HeldDay(IDA, Set.of(), 0, 480, 1020, 0, now, false, List.of(held));
            Optional<Ordered> ordered = Ordered.of(day, ROADS, ROUTES);
            if (ordered.isEmpty()) {
                continue;
            }
            found++;
            int at = 480;
            int stands = 0;
            for (Ordered.Arrival one : ordered.get().arrivals()) {
                Held was = List.of(held).stream()
                        .filter(other -> other.visit().equals(one.visit()))
                        .findFirst()
                        .orElseThrow();
                assertTrue(!was.stays() || one.starts() == was.starts(), "moved: " + one);
                if (!was.stays()) {
                    assertTrue(one.starts() >= Math.max(now, at) + ROADS.minutes(stands, was.place()), "" + ordered);
                }
                at = one.ends();
                stands = was.place();
            }
        }
        assertTrue(found > 50, "" + found);
    }
}
