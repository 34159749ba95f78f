package changeover.scheduling.dayplan.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Judges an answer by the question alone, without any of the search's own reckoning. */
final class SeasonChecked {

    private record Day(UUID hand, LocalDate day) {}

    private record Hour(int starts, int ends, int place) {}

    private SeasonChecked() {}

    static void check(SeasonCase asked, SeasonAnswer answer) {
        Map<UUID, Wanted> wanted =
                asked.wanted().stream().collect(Collectors.toMap(Wanted::visit, Function.identity()));
        Map<UUID, Hand> hands = asked.hands().stream().collect(Collectors.toMap(Hand::id, Function.identity()));
        Set<UUID> told = new HashSet<>();
        Map<Day, List<Hour>> hours = new HashMap<>();
        for (SeasonAnswer.Kept kept : answer.kept()) {
            Wanted one = wanted.get(kept.visit());
            assertTrue(told.add(kept.visit()), "told twice: " + kept);
            assertTrue(one.window().contains(kept.day()) && !kept.day().isBefore(asked.first()), "outside: " + kept);
            assertTrue(hands.get(kept.technician()).holds(one.tickets(), kept.day()), "without tickets: " + kept);
            assertTrue(kept.starts() >= one.earliest() && kept.starts() <= one.latest(), "not at its hours: " + kept);
            assertEquals(one.minutes(), kept.ends() - kept.starts());
            assertEquals(one.people() == 2, kept.second() != null);
            var hour = new Hour(kept.starts(), kept.ends(), one.place());
            hours.computeIfAbsent(new Day(kept.technician(), kept.day()), _ -> new ArrayList<>())
                    .add(hour);
            if (kept.second() != null) {
                hours.computeIfAbsent(new Day(kept.second(), kept.day()), _ -> new ArrayList<>())
                        .add(hour);
            }
        }
        answer.unkept().forEach(one -> assertTrue(told.add(one.visit()), "kept and not kept: " + one));
        assertEquals(wanted.keySet(), told);
        hours.forEach((day, list) -> drivable(asked, hands.get(day.hand()), day, list));
        answer.moreDays().forEach(more -> keeps(asked, wanted, answer, more));
    }

    private static void drivable(SeasonCase asked, Hand hand, Day day, List<Hour> given) {
        Shift shift = asked.shifts().stream()
                .filter(one -> one.hand().equals(day.hand()) && one.day().equals(day.day()))
                .findFirst()
                .orElse(null);
        assertNotNull(shift, "nobody works: " + day);
        List<Hour> all = new ArrayList<>(given);
        shift.booked().forEach(one -> all.add(new Hour(one.starts(), one.ends(), one.place())));
        all.sort(Comparator.comparingInt(Hour::starts));
        Hour before = new Hour(shift.from(), shift.from(), hand.base());
        int longest = 0;
        all.add(new Hour(shift.until(), shift.until(), hand.base()));
        for (Hour hour : all) {
            int road = asked.roads().minutes(before.place(), hour.place());
            boolean stood = !given.contains(before) && !given.contains(hour);
            assertTrue(stood || before.ends() + road <= hour.starts(), day + ": from " + before + " to " + hour);
            boolean overNoon = before.starts() < Page.LUNCH_FIRST && before.ends() > Page.LUNCH_LAST;
            if (hour.starts() > Page.LUNCH_FIRST && (overNoon || before.ends() <= Page.LUNCH_LAST)) {
                longest = Math.max(longest, hour.starts() - Math.max(before.ends(), 0) - road);
            }
            before = hour;
        }
        boolean over = shift.from() < Page.LUNCH_FIRST && shift.until() > Page.LUNCH_LAST;
        assertTrue(!over || longest >= hand.lunch() || shift.booked().size() > 1, "no lunch on " + day);
    }

    /** Somebody more on that day, from the shop and back, by trying every order of few visits. */
    private static void keeps(
            SeasonCase asked, Map<UUID, Wanted> wanted, SeasonAnswer answer, SeasonAnswer.MoreDay more) {
        SeasonCase.Open open = asked.open().get(more.day());
        List<Wanted> visits = more.visits().stream().map(wanted::get).toList();
        Set<UUID> unkept =
                answer.unkept().stream().map(SeasonAnswer.Unkept::visit).collect(Collectors.toSet());
        assertTrue(unkept.containsAll(more.visits()));
        assertTrue(visits.stream()
                .allMatch(one -> one.window().contains(more.day())
                        && more.tickets().containsAll(one.tickets())
                        && one.people() == more.technicians()));
        int minutes = visits.stream().mapToInt(Wanted::minutes).sum();
        assertTrue(minutes <= open.until() - open.from(), "more than a day: " + more);
        assertTrue(
                visits.size() > 7 || some(asked, visits, new ArrayList<>(), open.from(), asked.shop(), open.until()));
    }

    private static boolean some(
            SeasonCase asked, List<Wanted> left, List<Wanted> gone, int free, int place, int until) {
        if (gone.size() == left.size()) {
            return free + asked.roads().minutes(place, asked.shop()) <= until;
        }
        for (Wanted next : left) {
            int starts = Math.max(free + asked.roads().minutes(place, next.place()), next.earliest());
            if (!gone.contains(next) && starts <= next.latest()) {
                gone.add(next);
                if (some(asked, left, gone, starts + next.minutes(), next.place(), until)) {
                    return true;
                }
                gone.removeLast();
            }
        }
        return false;
    }
}
