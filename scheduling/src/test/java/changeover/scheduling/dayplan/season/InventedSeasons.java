package changeover.scheduling.dayplan.season;

import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.scheduling.dayplan.routes.Travel;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;

/** Invented seasons, the same for the same number. */
final class InventedSeasons {

    /** A Monday. */
    static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);

    private static final List<String> TICKETS = List.of("refrigerant", "gas", "electrical");

    private InventedSeasons() {}

    /** So many visits in a town of twenty kilometres, so many technicians, so many weekdays. */
    static SeasonCase town(int number, int visits, int technicians, int weekdays) {
        var random = new Random(number);
        var places = new ArrayList<Travel.Place>();
        places.add(new Travel.Place(45.4, -73.0));
        var hands = new ArrayList<Hand>();
        for (int at = 0; at < technicians; at++) {
            places.add(place(random));
            var tickets = new HashMap<String, LocalDate>();
            for (String kind : TICKETS) {
                if (at == 0 || random.nextInt(3) > 0) {
                    tickets.put(kind, random.nextInt(6) == 0 ? MONDAY.plusDays(9) : LocalDate.MAX);
                }
            }
            hands.add(new Hand(new UUID(1, at), tickets, places.size() - 1, 30, false));
        }
        List<LocalDate> days = MONDAY.datesUntil(MONDAY.plusDays(weekdays * 7L / 5 + 7))
                .filter(day -> day.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0)
                .limit(weekdays)
                .toList();
        var wanted = new ArrayList<Wanted>();
        for (int at = 0; at < visits; at++) {
            places.add(place(random));
            int opens = random.nextInt(days.size());
            int long5 = 1 + random.nextInt(Math.max(1, days.size() / 2));
            LocalDate last = days.get(Math.min(days.size() - 1, opens + long5));
            boolean morning = random.nextInt(12) == 0;
            wanted.add(new Wanted(
                    new UUID(2, at),
                    Window.ofDays(days.get(opens), last),
                    30 + 15 * random.nextInt(6),
                    random.nextInt(3) == 0 ? Set.of(TICKETS.get(random.nextInt(3))) : Set.of(),
                    random.nextInt(25) == 0 && technicians > 1 ? 2 : 1,
                    morning ? 8 * 60 : 0,
                    morning ? 11 * 60 : Wanted.MIDNIGHT,
                    random.nextInt(15) == 0 ? Roads.UNKNOWN : places.size() - 1));
        }
        var shifts = new ArrayList<Shift>();
        Map<LocalDate, SeasonCase.Open> open = new HashMap<>();
        for (LocalDate day : days) {
            open.put(day, new SeasonCase.Open(480, 960));
            for (Hand hand : hands) {
                List<Shift.Booked> booked = random.nextInt(9) == 0
                        ? List.of(new Shift.Booked(600, 690, 1 + random.nextInt(technicians)))
                        : List.of();
                shifts.add(new Shift(hand.id(), day, 480, 960, booked));
            }
        }
        Roads roads = Roads.of(AsTheCrowFlies.USUAL.between(places));
        return new SeasonCase(wanted, hands, shifts, roads, open, 0, MONDAY);
    }

    private static Travel.Place place(Random random) {
        return new Travel.Place(45.4 + random.nextGaussian() * 0.06, -73.0 + random.nextGaussian() * 0.08);
    }
}
