package changeover.scheduling.dayplan.change;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.season.Roads;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** Days on a straight road with a place every ten minutes. */
abstract class AStraightRoad {

    static final UUID IDA = new UUID(1, 1);
    static final UUID BEN = new UUID(1, 2);
    static final Roads ROADS = road(12);

    static Roads road(int places) {
        int[][] seconds = new int[places][places];
        for (int from = 0; from < places; from++) {
            for (int to = 0; to < places; to++) {
                seconds[from][to] = 600 * Math.abs(from - to);
            }
        }
        return Roads.of(Drives.of(seconds));
    }

    static Held held(int number, String starts, int minutes, int place, boolean told) {
        int from = at(starts);
        return new Held(new UUID(2, number), from, from + minutes, place, Set.of(), told, told, 0, 24 * 60, 1);
    }

    static HeldDay day(UUID who, Held... held) {
        return dayAt("00:00", who, held);
    }

    static HeldDay dayAt(String now, UUID who, Held... held) {
        return new HeldDay(who, Set.of("gas"), 0, 480, 960, 30, at(now), false, List.of(held));
    }

    static int at(String hour) {
        return LocalTime.parse(hour).toSecondOfDay() / 60;
    }

    static Insertions.Wanted wanted(int minutes, int place, String earliest, String... tickets) {
        return new Insertions.Wanted(new UUID(3, 1), minutes, Set.of(tickets), place, 1, at(earliest), 24 * 60);
    }

    static Insertions.Wanted forTwo(int minutes, int place, String earliest, String... tickets) {
        return new Insertions.Wanted(new UUID(3, 1), minutes, Set.of(tickets), place, 2, at(earliest), 24 * 60);
    }
}
