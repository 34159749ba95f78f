package changeover.scheduling.dayplan.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A day as a test tells it: places on a street, a minute of driving from each to the next, hours in minutes. */
final class Day {
    static final int HOUR = 3600;
    static final Lunch NOON = new Lunch(23 * HOUR / 2, 13 * HOUR, HOUR / 2);

    final List<Turn> turns = new ArrayList<>();
    final List<Stop> stops = new ArrayList<>();

    /** The street's base is its place 0. */
    Day technician(Set<String> tickets, @Nullable Lunch lunch) {
        turns.add(new Turn(technician(turns.size()), 0, 8 * HOUR, 17 * HOUR, tickets, 1000, lunch));
        return this;
    }

    Day stop(int place, int fromHour, int untilHour, int minutes, String... tickets) {
        stops.add(new Stop(
                visit(stops.size()), place, fromHour * HOUR, untilHour * HOUR, minutes * 60, Set.of(tickets), 1, null));
        return this;
    }

    Day promised(int place, int technician, int hour, int minutes, String... tickets) {
        stops.add(new Stop(
                visit(stops.size()),
                place,
                0,
                24 * HOUR,
                minutes * 60,
                Set.of(tickets),
                1,
                new Promised(technician(technician), hour * HOUR)));
        return this;
    }

    static UUID technician(int number) {
        return new UUID(1, number);
    }

    static UUID visit(int number) {
        return new UUID(0, number);
    }

    TravelDay onAStreet() {
        int places = stops.stream().mapToInt(Stop::place).max().orElse(0) + 1;
        int[][] drives = new int[places][places];
        for (int from = 0; from < places; from++) {
            for (int to = 0; to < places; to++) {
                drives[from][to] = 60 * Math.abs(from - to);
            }
        }
        return new TravelDay(turns, stops, Drives.of(drives));
    }

    /** Some crew and some homes of a town, a third of the visits with a ticket, some promised, more than fit at times. */
    static TravelDay some(long seed) {
        Random random = new Random(seed);
        Day day = new Day();
        int crew = 1 + random.nextInt(4);
        for (int number = 0; number < crew; number++) {
            day.technician(
                    number % 2 == 0 ? Set.of("gas", "refrigerant") : Set.of("gas"),
                    random.nextInt(4) == 0 ? null : NOON);
            if (random.nextBoolean()) {
                day.promised(day.stops.size() + 1, number, 8 + random.nextInt(3), 30 + random.nextInt(30));
            }
            if (random.nextBoolean()) {
                day.promised(day.stops.size() + 1, number, 13 + random.nextInt(3), 30, "electrical");
            }
        }
        int free = 1 + random.nextInt(7 * crew);
        for (int number = 0; number < free; number++) {
            int opens = 8 + random.nextInt(6);
            String[] tickets = random.nextInt(3) > 0
                    ? new String[0]
                    : new String[] {
                        random.nextInt(12) == 0 ? "electrical" : random.nextBoolean() ? "gas" : "refrigerant"
                    };
            day.stop(day.stops.size() + 1, opens, opens + 1 + random.nextInt(5), 20 + random.nextInt(90), tickets);
        }
        List<Travel.Place> places = new ArrayList<>();
        for (int place = 0; place <= day.stops.size(); place++) {
            places.add(new Travel.Place(45.5 + random.nextInt(1000) / 8000.0, -73.6 + random.nextInt(1000) / 8000.0));
        }
        return new TravelDay(day.turns, day.stops, AsTheCrowFlies.USUAL.between(places));
    }
}
