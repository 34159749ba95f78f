package changeover.scheduling.dayplan.season;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Visits laid on pages. A quarter of a minute on the road weighs as much as what a minute more makes a week fuller: so
 * neighbours come on one day, and no week is crammed while another is empty.
 */
final class Laid {

    static final int NOWHERE = -1;

    private static final int ROAD = 4;

    /** Where one more visit would stand, and what that costs. */
    record Spot(int page, int at, long cost) {}

    final Figures season;
    private final int[][] order;
    private final int[] page;
    private final int[] second;
    private final int[] fixedAt;
    private final int[] busy;
    private final long[] weekBusy;
    private int without;
    private long cost;
    private long road;

    /** Nothing but what is booked. */
    Laid(Figures season) {
        this.season = season;
        order = new int[season.pages.length][];
        page = new int[season.visits];
        second = new int[season.visits];
        fixedAt = new int[season.visits];
        Arrays.fill(page, NOWHERE);
        Arrays.fill(second, NOWHERE);
        Arrays.fill(fixedAt, NOWHERE);
        busy = new int[season.pages.length];
        weekBusy = new long[season.weekHolds.length];
        without = season.visits;
        for (int at = 0; at < order.length; at++) {
            order[at] = Arrays.stream(season.booked[at])
                    .boxed()
                    .sorted((one, other) -> Integer.compare(season.earliest[one], season.earliest[other]))
                    .mapToInt(Integer::intValue)
                    .toArray();
            busy[at] =
                    Arrays.stream(order[at]).map(stop -> season.minutes[stop]).sum();
            weekBusy[season.week[at]] += busy[at];
        }
    }

    private Laid(Laid other) {
        season = other.season;
        order = other.order.clone();
        page = other.page.clone();
        second = other.second.clone();
        fixedAt = other.fixedAt.clone();
        busy = other.busy.clone();
        weekBusy = other.weekBusy.clone();
        without = other.without;
        cost = other.cost;
        road = other.road;
    }

    Laid copy() {
        return new Laid(this);
    }

    /** How many visits have no day. */
    int without() {
        return without;
    }

    /** Minutes on the road that the visits laid here add to what is booked. */
    long road() {
        return road;
    }

    boolean betterThan(Laid other) {
        return without != other.without ? without < other.without : cost < other.cost;
    }

    /** Whether it is no worse than the other by more than so much of the cost. */
    boolean nearly(Laid other, long more) {
        return without < other.without || (without == other.without && cost < other.cost + more);
    }

    boolean has(int visit) {
        return page[visit] != NOWHERE;
    }

    /** Visits for two stand at their hour and are not moved again. */
    boolean isFixed(int visit) {
        return fixedAt[visit] != NOWHERE;
    }

    int pageOf(int visit) {
        return page[visit];
    }

    int secondOf(int visit) {
        return second[visit];
    }

    int[] order(int at) {
        return order[at];
    }

    /** The begin of a visit for two. */
    int fixedAt(int visit) {
        return fixedAt[visit];
    }

    /** @param chance passes over a spot now and then, so that not always the same is tried; null looks at all */
    @Nullable
    Spot best(int visit, int[] among, @Nullable RandomGenerator chance) {
        Spot best = null;
        int minutes = season.minutes[visit];
        for (int at : among) {
            if (busy[at] + minutes > season.pages[at].minutes() || (chance != null && chance.nextInt(100) < 2)) {
                continue;
            }
            long level = level(at, minutes);
            if (best != null && level - (long) ROAD * Roads.FROM_UNKNOWN >= best.cost()) {
                continue;
            }
            for (int between = 0; between <= order[at].length; between++) {
                long more = level + (long) ROAD * detour(at, between, season.place[visit]);
                if ((best == null || more < best.cost())
                        && season.pages[at].back(season, order[at], between, visit) != Page.NEVER) {
                    best = new Spot(at, between, more);
                }
            }
        }
        return best;
    }

    /** What so many minutes more make the week of a page fuller. */
    private long level(int at, int minutes) {
        int week = season.week[at];
        long holds = Math.max(1, season.weekHolds[week]);
        return (2 * weekBusy[week] * minutes + (long) minutes * minutes) / holds;
    }

    private int detour(int at, int between, int place) {
        int base = season.pages[at].base();
        int before = between == 0 ? base : season.place[order[at][between - 1]];
        int after = between == order[at].length ? base : season.place[order[at][between]];
        int straight = order[at].length == 0 ? 0 : season.road(before, after);
        return season.road(before, place) + season.road(place, after) - straight;
    }

    void put(int visit, Spot spot) {
        insert(visit, spot.page(), spot.at());
        page[visit] = spot.page();
        without--;
    }

    /** Two go together to a visit at an hour that both have; it stays there. */
    void putTogether(int visit, Spot first, Spot other, int starts) {
        insert(visit, first.page(), first.at());
        insert(season.second(visit), other.page(), other.at());
        page[visit] = first.page();
        second[visit] = other.page();
        fixedAt[visit] = starts;
        without--;
    }

    private void insert(int stop, int at, int between) {
        account(at, season.minutes[stop], detour(at, between, season.place[stop]), 1);
        int[] longer = new int[order[at].length + 1];
        System.arraycopy(order[at], 0, longer, 0, between);
        longer[between] = stop;
        System.arraycopy(order[at], between, longer, between + 1, order[at].length - between);
        order[at] = longer;
    }

    /** Takes a visit off its day; false where the day without it could not be driven, so that it stays. */
    boolean take(int visit) {
        int at = page[visit];
        if (at == NOWHERE || isFixed(visit)) {
            return false;
        }
        int[] before = order[at];
        int[] shorter = new int[before.length - 1];
        int between = 0;
        while (before[between] != visit) {
            between++;
        }
        System.arraycopy(before, 0, shorter, 0, between);
        System.arraycopy(before, between + 1, shorter, between, shorter.length - between);
        if (season.pages[at].back(season, shorter) == Page.NEVER) {
            return false;
        }
        order[at] = shorter;
        account(at, season.minutes[visit], detour(at, between, season.place[visit]), -1);
        page[visit] = NOWHERE;
        without++;
        return true;
    }

    private void account(int at, int minutes, int detour, int sign) {
        int week = season.week[at];
        if (sign < 0) {
            busy[at] -= minutes;
            weekBusy[week] -= minutes;
        }
        long holds = Math.max(1, season.weekHolds[week]);
        // Sums of whole weeks, so that taking off gives back exactly what putting there cost.
        long before = weekBusy[week] * weekBusy[week] / holds;
        long after = (weekBusy[week] + minutes) * (weekBusy[week] + minutes) / holds;
        cost += sign * ((long) ROAD * detour + after - before);
        road += (long) sign * detour;
        if (sign > 0) {
            busy[at] += minutes;
            weekBusy[week] += minutes;
        }
    }
}
