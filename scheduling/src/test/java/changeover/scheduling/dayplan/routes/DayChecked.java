package changeover.scheduling.dayplan.routes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * Judges an answer from the question alone: it walks every technician's day second by second as told and names whatever
 * was not kept. Nothing of the search is asked.
 */
final class DayChecked {
    private final TravelDay day;
    private final DayRoutes routes;
    private final List<String> broken = new ArrayList<>();
    private final Map<UUID, Stop> stops = new HashMap<>();
    private final Map<UUID, Integer> seen = new HashMap<>();
    private long driving;

    private DayChecked(TravelDay day, DayRoutes routes) {
        this.day = day;
        this.routes = routes;
        day.stops().forEach(stop -> stops.put(stop.visit(), stop));
    }

    /** What the answer breaks, in words; empty when it breaks nothing. */
    static List<String> broken(TravelDay day, DayRoutes routes) {
        DayChecked checked = new DayChecked(day, routes);
        checked.everyTurn();
        checked.everyStopOnce();
        if (checked.driving != routes.travel()) {
            checked.broken.add("it says %d s of driving and drives %d".formatted(routes.travel(), checked.driving));
        }
        return checked.broken;
    }

    private void everyTurn() {
        Set<UUID> driven = new HashSet<>();
        for (Drive drive : routes.drives()) {
            if (!driven.add(drive.technician())) {
                broken.add(drive.technician() + " drives twice");
            }
            Turn turn = day.turns().stream()
                    .filter(one -> one.technician().equals(drive.technician()))
                    .findFirst()
                    .orElseThrow();
            walk(turn, drive);
        }
        for (Turn turn : day.turns()) {
            if (driven.contains(turn.technician()) == routes.overPromised().contains(turn.technician())) {
                broken.add(turn.technician() + " neither drives nor is over-promised, or is both");
            }
        }
    }

    private void walk(Turn turn, Drive drive) {
        int lunchFrom = drive.lunchStarts() == null ? -1 : drive.lunchStarts();
        int lunchLasts = turn.lunch() == null ? 0 : turn.lunch().seconds();
        if (turn.lunch() != null && !drive.arrivals().isEmpty()) {
            check(
                    lunchFrom >= turn.lunch().earliest()
                            && lunchFrom <= turn.lunch().latest(),
                    turn.technician() + " has no lunch in its hours");
        }
        int place = turn.base();
        int free = turn.from();
        int load = 0;
        for (Drive.Arrival arrival : drive.arrivals()) {
            Stop stop = stops.get(arrival.visit());
            seen.merge(stop.visit(), 1, Integer::sum);
            String who = "stop " + stop.place() + " of " + turn.technician();
            check(
                    arrival.starts() - free
                            >= needed(place, stop.place(), free, arrival.starts(), lunchFrom, lunchLasts),
                    who + ": too little time for the road and the lunch before it");
            check(arrival.ends() == arrival.starts() + stop.seconds(), who + " is cut short or drawn out");
            if (stop.promised() == null) {
                check(
                        arrival.starts() >= stop.earliest() && arrival.starts() <= stop.latest(),
                        who + " misses its hours");
                check(turn.tickets().containsAll(stop.tickets()), who + " is sent without the ticket");
            } else {
                check(stop.promised().technician().equals(turn.technician()), who + " was promised by another");
                check(stop.promised().starts() == arrival.starts(), who + " was promised at another hour");
            }
            if (lunchFrom >= 0 && lunchLasts > 0) {
                check(
                        lunchFrom + lunchLasts <= arrival.starts() || lunchFrom >= arrival.ends(),
                        who + " is worked through lunch");
            }
            driving += day.drives().seconds(place, stop.place());
            load += stop.load();
            place = stop.place();
            free = arrival.ends();
        }
        driving += day.drives().seconds(place, turn.base());
        check(
                drive.back() - free >= needed(place, turn.base(), free, drive.back(), lunchFrom, lunchLasts),
                turn.technician() + " is back too soon");
        check(drive.back() <= turn.until(), turn.technician() + " is back too late");
        check(load <= turn.room(), turn.technician() + "'s van is too small");
        check(drive.leaves() >= turn.from(), turn.technician() + " leaves too soon");
        if (!drive.arrivals().isEmpty()) {
            Drive.Arrival first = drive.arrivals().getFirst();
            check(
                    first.starts() - drive.leaves()
                            >= needed(
                                    turn.base(),
                                    stops.get(first.visit()).place(),
                                    drive.leaves(),
                                    first.starts(),
                                    lunchFrom,
                                    lunchLasts),
                    turn.technician() + " leaves too late");
        }
    }

    /** The road, and the lunch when it lies between the two hours. */
    private int needed(int from, int to, int free, int starts, int lunchFrom, int lunchLasts) {
        boolean between = lunchFrom >= free && lunchFrom < starts;
        return day.drives().seconds(from, to) + (between ? lunchLasts : 0);
    }

    private void everyStopOnce() {
        for (Stop stop : day.stops()) {
            boolean ofOverPromised = stop.promised() != null
                    && routes.overPromised().contains(stop.promised().technician());
            int times = seen.getOrDefault(stop.visit(), 0)
                    + (routes.leftOut().contains(stop.visit()) ? 1 : 0)
                    + (ofOverPromised ? 1 : 0);
            check(times == 1, "the stop at %d stands %d times".formatted(stop.place(), times));
            check(
                    stop.promised() == null || !routes.leftOut().contains(stop.visit()),
                    "the promise at %d was left out".formatted(stop.place()));
        }
    }

    private void check(boolean kept, String otherwise) {
        if (!kept) {
            broken.add(otherwise);
        }
    }
}
