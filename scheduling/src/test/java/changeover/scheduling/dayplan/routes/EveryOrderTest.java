package changeover.scheduling.dayplan.routes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** On small days every order of every turn is tried: none visits more homes, and none that visits as many drives less. */
class EveryOrderTest {

    @Test
    void no_order_of_a_small_day_is_better() {
        int wanted = Boolean.getBoolean("changeover.deep") ? 2_000 : 60;
        int seen = 0;
        for (long seed = 0; seen < wanted; seed++) {
            TravelDay day = Day.some(seed);
            if (day.turns().size() > 2 || day.stops().size() > 6) {
                continue;
            }
            seen++;
            DayRoutes answer = new InsertedRoutes(Duration.ofSeconds(5)).of(day);
            assertEquals(List.of(), DayChecked.broken(day, answer), "seed " + seed);
            Best best = new Best(day.without(day.overPromised()));
            best.place(0, 0);
            assertEquals(best.out, answer.leftOut().size(), "left out with seed " + seed);
            assertEquals(best.travel, answer.travel(), "driven with seed " + seed);
        }
    }

    private static final class Best {
        private final TravelDay day;
        private final List<List<Stop>> orders = new ArrayList<>();
        private int out = Integer.MAX_VALUE;
        private long travel;

        Best(TravelDay day) {
            this.day = day;
            day.turns().forEach(turn -> orders.add(new ArrayList<>()));
        }

        /** Puts the stop of this number everywhere, and nowhere, and goes on to the next. */
        void place(int number, int leftOut) {
            if (number == day.stops().size()) {
                judge(leftOut);
                return;
            }
            Stop stop = day.stops().get(number);
            for (List<Stop> order : orders) {
                for (int at = 0; at <= order.size(); at++) {
                    order.add(at, stop);
                    place(number + 1, leftOut);
                    order.remove(at);
                }
            }
            if (stop.promised() == null) {
                place(number + 1, leftOut + 1);
            }
        }

        private void judge(int leftOut) {
            if (leftOut > out) {
                return;
            }
            long driven = 0;
            for (int turn = 0; turn < orders.size(); turn++) {
                Optional<Drive> drive = Drive.of(day, day.turns().get(turn), orders.get(turn));
                if (drive.isEmpty()) {
                    return;
                }
                driven += drive.get().travel();
            }
            if (leftOut < out || driven < travel) {
                out = leftOut;
                travel = driven;
            }
        }
    }
}
