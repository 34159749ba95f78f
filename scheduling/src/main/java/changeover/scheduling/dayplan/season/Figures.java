package changeover.scheduling.dayplan.season;

import changeover.contracts.calendar.Window;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;

/**
 * A season in figures. A stop is a visit that waits, what is booked, or the second person of a visit; a page is one
 * technician's day. Minutes of the day throughout.
 */
final class Figures {

    final SeasonCase asked;
    final int visits;
    final int[] place;
    final int[] minutes;
    final int[] earliest;
    final int[] latest;
    final Page[] pages;
    final Hand[] hands;
    final LocalDate[] days;
    final int[] week;
    final int[] weekHolds;
    final int[][] mayOn;
    final int[][] booked;

    private record Alike(Window window, Set<String> tickets) {}

    Figures(SeasonCase asked) {
        this.asked = asked;
        visits = asked.wanted().size();
        int bookings =
                asked.shifts().stream().mapToInt(shift -> shift.booked().size()).sum();
        int stops = visits + bookings + visits;
        place = new int[stops];
        minutes = new int[stops];
        earliest = new int[stops];
        latest = new int[stops];
        for (int visit = 0; visit < visits; visit++) {
            Wanted wanted = asked.wanted().get(visit);
            write(visit, wanted.place(), wanted.minutes(), wanted.earliest(), wanted.latest());
            write(second(visit), wanted.place(), wanted.minutes(), wanted.earliest(), wanted.latest());
        }
        int count = asked.shifts().size();
        pages = new Page[count];
        hands = new Hand[count];
        days = new LocalDate[count];
        week = new int[count];
        booked = new int[count][];
        Map<LocalDate, Integer> weeks = new HashMap<>();
        Map<UUID, Hand> crew = new HashMap<>();
        asked.hands().forEach(hand -> crew.put(hand.id(), hand));
        int stop = 2 * visits;
        for (int at = 0; at < count; at++) {
            Shift shift = asked.shifts().get(at);
            Hand hand = Objects.requireNonNull(crew.get(shift.hand()));
            hands[at] = hand;
            days[at] = shift.day();
            pages[at] = Page.of(shift.from(), shift.until(), hand.lunch(), hand.base());
            week[at] = weeks.computeIfAbsent(monday(shift.day()), _ -> weeks.size());
            booked[at] = new int[shift.booked().size()];
            for (int number = 0; number < booked[at].length; number++) {
                Shift.Booked one = shift.booked().get(number);
                write(stop, one.place(), one.ends() - one.starts(), one.starts(), one.starts());
                booked[at][number] = stop++;
            }
        }
        weekHolds = new int[weeks.size()];
        for (int at = 0; at < count; at++) {
            weekHolds[week[at]] += pages[at].minutes();
        }
        mayOn = mayOn();
    }

    private void write(int stop, int where, int takes, int from, int until) {
        place[stop] = where;
        minutes[stop] = takes;
        earliest[stop] = from;
        latest[stop] = until;
    }

    /** The stop of whoever goes with the first to a visit for two. */
    int second(int visit) {
        return visits + visit;
    }

    /** Whether it stood before this season was planned. */
    boolean isBooked(int stop) {
        return stop >= 2 * visits;
    }

    int road(int from, int to) {
        return asked.roads().minutes(from, to);
    }

    Wanted wanted(int visit) {
        return asked.wanted().get(visit);
    }

    static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private int[][] mayOn() {
        Map<Alike, int[]> found = new HashMap<>();
        int[][] all = new int[visits][];
        for (int visit = 0; visit < visits; visit++) {
            Wanted wanted = wanted(visit);
            all[visit] = found.computeIfAbsent(
                    new Alike(wanted.window(), wanted.tickets()), alike -> pagesIn(wanted.window(), alike.tickets()));
        }
        return all;
    }

    /** The days of a window, from the first that may be given on, of whoever holds the tickets. */
    int[] pagesIn(Window window, Set<String> tickets) {
        List<Integer> open = new ArrayList<>();
        for (int page = 0; page < pages.length; page++) {
            LocalDate day = days[page];
            if (!day.isBefore(asked.first()) && window.contains(day) && hands[page].holds(tickets, day)) {
                open.add(page);
            }
        }
        return open.stream().mapToInt(Integer::intValue).toArray();
    }
}
