package changeover.scheduling.dayplan.season;

import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.season.SeasonAnswer.Kept;
import changeover.scheduling.dayplan.season.SeasonAnswer.Unkept;
import changeover.scheduling.dayplan.season.SeasonAnswer.Why;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What was laid, told by days and hours; what was not, with the reason. */
final class Told {

    private final Figures season;
    private final Laid laid;

    Told(Figures season, Laid laid) {
        this.season = season;
        this.laid = laid;
    }

    SeasonAnswer answer() {
        List<Integer> left = IntStream.range(0, season.visits)
                .filter(visit -> !laid.has(visit))
                .boxed()
                .toList();
        List<Unkept> unkept = left.stream()
                .map(visit -> new Unkept(season.wanted(visit).visit(), why(visit)))
                .toList();
        WhatWouldKeep more = WhatWouldKeep.of(season, laid, left, this::why);
        return new SeasonAnswer(kept(), unkept, more.days(), more.tickets(), laid.road());
    }

    List<Kept> kept() {
        var kept = new ArrayList<Kept>();
        for (int page = 0; page < season.pages.length; page++) {
            int[] order = laid.order(page);
            int[] starts = season.pages[page].starts(season, order);
            for (int at = 0; at < order.length; at++) {
                int visit = order[at];
                if (visit < season.visits) {
                    int before = at == 0 ? season.pages[page].base() : season.place[order[at - 1]];
                    int second = laid.secondOf(visit);
                    kept.add(new Kept(
                            season.wanted(visit).visit(),
                            season.hands[page].id(),
                            second == Laid.NOWHERE ? null : season.hands[second].id(),
                            season.hands[page].tried() || (second != Laid.NOWHERE && season.hands[second].tried()),
                            season.days[page],
                            starts[at],
                            starts[at] + season.minutes[visit],
                            season.road(before, season.place[visit]),
                            at));
                }
            }
        }
        kept.sort(
                Comparator.comparing(Kept::day).thenComparing(Kept::technician).thenComparing(Kept::starts));
        return kept;
    }

    private Why why(int visit) {
        Wanted wanted = season.wanted(visit);
        @Nullable Window left = wanted.window().since(season.asked.first()).orElse(null);
        if (left == null) {
            return Why.WINDOW_OVER;
        }
        int[] anybody = season.pagesIn(wanted.window(), Set.of());
        if (anybody.length == 0) {
            return Why.NOBODY_WORKS;
        }
        if (season.mayOn[visit].length == 0) {
            return Why.NO_TICKET;
        }
        if (wanted.people() == 2 && !twoTogether(visit, anybody)) {
            return Why.NO_SECOND;
        }
        boolean fits = IntStream.of(season.mayOn[visit])
                .anyMatch(page -> season.pages[page].back(season, new int[0], 0, visit) != Page.NEVER);
        return fits ? Why.NO_HOURS : Why.TOO_LONG;
    }

    private boolean twoTogether(int visit, int[] anybody) {
        Set<LocalDate> days = IntStream.of(season.mayOn[visit])
                .mapToObj(page -> season.days[page])
                .collect(java.util.stream.Collectors.toSet());
        return days.stream()
                .anyMatch(day -> IntStream.of(anybody)
                                .filter(page -> season.days[page].equals(day))
                                .count()
                        > 1);
    }
}
