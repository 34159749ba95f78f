package changeover.scheduling.dayplan.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** An answer that was found before, laid again as far as it still holds: who and which day, in the same order. */
final class Earlier {

    private record Day(UUID hand, LocalDate day) {}

    private final Figures season;
    private final Map<Day, Integer> pages = new HashMap<>();
    private final Map<UUID, Integer> visits = new HashMap<>();

    Earlier(Figures season) {
        this.season = season;
        for (int page = 0; page < season.pages.length; page++) {
            pages.put(new Day(season.hands[page].id(), season.days[page]), page);
        }
        for (int visit = 0; visit < season.visits; visit++) {
            visits.put(season.wanted(visit).visit(), visit);
        }
    }

    void put(Laid laid, List<SeasonAnswer.Kept> earlier) {
        for (SeasonAnswer.Kept kept : earlier) {
            UUID second = kept.second();
            Integer visit = visits.get(kept.visit());
            if (second != null && visit != null) {
                Integer page = pages.get(new Day(kept.technician(), kept.day()));
                Integer other = pages.get(new Day(second, kept.day()));
                if (page != null && other != null) {
                    new Pairs(season).again(laid, visit, page, other, kept.starts());
                }
            }
        }
        earlier.stream()
                .filter(kept -> kept.second() == null)
                .sorted(Comparator.comparing(SeasonAnswer.Kept::day)
                        .thenComparing(SeasonAnswer.Kept::technician)
                        .thenComparing(SeasonAnswer.Kept::position))
                .forEach(kept -> alone(laid, kept));
    }

    private void alone(Laid laid, SeasonAnswer.Kept kept) {
        Integer visit = visits.get(kept.visit());
        Integer page = pages.get(new Day(kept.technician(), kept.day()));
        if (visit == null || page == null || !isAmong(season.mayOn[visit], page)) {
            return;
        }
        int[] order = laid.order(page);
        int at = Math.min(kept.position(), order.length);
        if (season.pages[page].back(season, order, at, visit) == Page.NEVER) {
            Laid.Spot other = laid.best(visit, new int[] {page}, null);
            if (other != null) {
                laid.put(visit, other);
            }
            return;
        }
        laid.put(visit, new Laid.Spot(page, at, 0));
    }

    private static boolean isAmong(int[] pages, int page) {
        for (int one : pages) {
            if (one == page) {
                return true;
            }
        }
        return false;
    }
}
