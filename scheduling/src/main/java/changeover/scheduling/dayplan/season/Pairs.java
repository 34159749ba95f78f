package changeover.scheduling.dayplan.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Visits that two must make together are given their hour first, at a quarter of an hour that both have; of all such hours
 * the one with the least road. Whoever leads holds the tickets.
 */
final class Pairs {

    private static final int QUARTER = 15;

    private record Pair(Laid.Spot first, Laid.Spot other, int starts, long cost) {}

    private final Figures season;

    Pairs(Figures season) {
        this.season = season;
    }

    void put(Laid laid) {
        for (int visit = 0; visit < season.visits; visit++) {
            if (season.wanted(visit).people() == 2 && !laid.has(visit)) {
                Pair pair = best(laid, visit);
                if (pair != null) {
                    put(laid, visit, pair.first(), pair.other(), pair.starts());
                }
            }
        }
    }

    /** As it stood in an earlier answer; false where it no longer fits. */
    boolean again(Laid laid, int visit, int page, int second, int starts) {
        Laid.Spot first = spot(laid, visit, page, starts);
        Laid.Spot other = spot(laid, season.second(visit), second, starts);
        if (first == null || other == null) {
            return false;
        }
        put(laid, visit, first, other, starts);
        return true;
    }

    private void put(Laid laid, int visit, Laid.Spot first, Laid.Spot other, int starts) {
        hold(visit, starts, starts);
        laid.putTogether(visit, first, other, starts);
    }

    private void hold(int visit, int from, int until) {
        for (int stop : new int[] {visit, season.second(visit)}) {
            season.earliest[stop] = from;
            season.latest[stop] = until;
        }
    }

    private @Nullable Pair best(Laid laid, int visit) {
        Wanted wanted = season.wanted(visit);
        int[] anybody = season.pagesIn(wanted.window(), Set.of());
        Pair best = null;
        for (int page : season.mayOn[visit]) {
            for (int starts : starts(page, wanted)) {
                Laid.Spot first = spot(laid, visit, page, starts);
                if (first == null || (best != null && first.cost() >= best.cost())) {
                    continue;
                }
                for (int other : anybody) {
                    if (other == page || !season.days[other].equals(season.days[page])) {
                        continue;
                    }
                    Laid.Spot with = spot(laid, season.second(visit), other, starts);
                    if (with != null && (best == null || first.cost() + with.cost() < best.cost())) {
                        best = new Pair(first, with, starts, first.cost() + with.cost());
                    }
                }
            }
        }
        return best;
    }

    private List<Integer> starts(int page, Wanted wanted) {
        var starts = new ArrayList<Integer>();
        int from = Math.max(season.pages[page].from(), wanted.earliest());
        int until = Math.min(season.pages[page].until() - wanted.minutes(), wanted.latest());
        for (int at = (from + QUARTER - 1) / QUARTER * QUARTER; at <= until; at += QUARTER) {
            starts.add(at);
        }
        return starts;
    }

    /** Where it stands on a page when it begins exactly then; null where it cannot. */
    private Laid.@Nullable Spot spot(Laid laid, int stop, int page, int starts) {
        Wanted wanted = season.wanted(stop % season.visits);
        season.earliest[stop] = starts;
        season.latest[stop] = starts;
        Laid.Spot spot = laid.best(stop, new int[] {page}, null);
        season.earliest[stop] = wanted.earliest();
        season.latest[stop] = wanted.latest();
        return spot;
    }
}
