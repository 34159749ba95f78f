package changeover.scheduling.dayplan.season;

import org.jspecify.annotations.Nullable;

/**
 * The hours of one day: out from a base and back, with a lunch that begins between eleven and half past one where the day
 * reaches over it.
 *
 * @param from minute of the day
 * @param until minute of the day
 * @param lunch minutes; nought for none
 */
record Page(int from, int until, int lunch, int base) {

    static final int LUNCH_FIRST = 11 * 60;
    static final int LUNCH_LAST = 13 * 60 + 30;

    /** What no day can be: nobody is back by then. */
    static final int NEVER = -1;

    static Page of(int from, int until, int lunch, int base) {
        boolean over = from < LUNCH_FIRST && until > LUNCH_LAST;
        return new Page(from, until, over ? lunch : 0, base);
    }

    int minutes() {
        return until - from;
    }

    /** When they are back after these stops in this order, {@link #NEVER} when some hour would not be kept. */
    int back(Figures season, int[] order) {
        return back(season, order, order.length, -1, null);
    }

    /** As if one more stop stood at a place in the order. */
    int back(Figures season, int[] order, int at, int more) {
        return back(season, order, at, more, null);
    }

    /** When each stop begins. */
    int[] starts(Figures season, int[] order) {
        int[] starts = new int[order.length];
        back(season, order, order.length, -1, starts);
        return starts;
    }

    private int back(Figures season, int[] order, int at, int more, int @Nullable [] starts) {
        int stops = order.length + (more < 0 ? 0 : 1);
        boolean eaten = lunch == 0;
        int here = base;
        int free = from;
        // What was booked by hand is driven as it was booked, however short the time between; nothing new may make it
        // late.
        boolean stands = true;
        for (int number = 0; number <= stops; number++) {
            boolean home = number == stops;
            int stop = home ? -1 : more < 0 || number < at ? order[number] : number == at ? more : order[number - 1];
            int next = home ? base : season.place[stop];
            int there = free + season.road(here, next);
            if (!eaten && lunchNow(season, there, stop)) {
                int begins = Math.max(free, LUNCH_FIRST);
                if (begins > LUNCH_LAST) {
                    return NEVER;
                }
                there = Math.max(there, begins) + lunch;
                eaten = true;
            }
            if (home) {
                return there > until && !stands ? NEVER : there;
            }
            int begins = Math.max(there, season.earliest[stop]);
            if (begins > season.latest[stop]) {
                if (!stands || !season.isBooked(stop)) {
                    return NEVER;
                }
                begins = season.latest[stop];
            }
            stands = season.isBooked(stop);
            if (starts != null) {
                starts[number] = begins;
            }
            free = begins + season.minutes[stop];
            // Who is at a home over the whole of noon eats after it.
            if (!eaten && begins < LUNCH_FIRST && free > LUNCH_LAST) {
                free += lunch;
                eaten = true;
            }
            here = next;
        }
        return NEVER;
    }

    /** At noon, or from eleven on before what would last beyond it; not on the way home before it. */
    private static boolean lunchNow(Figures season, int there, int stop) {
        if (there > LUNCH_FIRST + 30) {
            return true;
        }
        if (stop < 0) {
            return false;
        }
        int begins = Math.max(there, season.earliest[stop]);
        return begins >= LUNCH_FIRST && begins + season.minutes[stop] > LUNCH_LAST;
    }
}
