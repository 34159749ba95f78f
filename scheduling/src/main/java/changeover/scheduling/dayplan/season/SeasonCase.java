package changeover.scheduling.dayplan.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * The question of a season: these visits, on the days of this crew. In whatever order the rows come, the question is the
 * same.
 *
 * @param open the days on which the business works at all, with the hours that one more technician would have
 * @param shop where one more technician would begin, as the roads number the places
 * @param first the first day on which anything may be given
 */
public record SeasonCase(
        List<Wanted> wanted,
        List<Hand> hands,
        List<Shift> shifts,
        Roads roads,
        Map<LocalDate, Open> open,
        int shop,
        LocalDate first) {

    /** Hours of a day, in minutes of the day. */
    public record Open(int from, int until) {}

    public SeasonCase {
        wanted = wanted.stream().sorted(URGENT).toList();
        hands = hands.stream().sorted(Comparator.comparing(Hand::id)).toList();
        shifts = shifts.stream()
                .sorted(Comparator.comparing(Shift::day).thenComparing(Shift::hand))
                .toList();
        open = Map.copyOf(open);
        Set<UUID> visits = new HashSet<>();
        wanted.forEach(one -> require(visits.add(one.visit()), "The visit %s waits twice".formatted(one.visit())));
        Set<UUID> crew = hands.stream().map(Hand::id).collect(Collectors.toSet());
        shifts.forEach(shift -> require(crew.contains(shift.hand()), "A shift of nobody: " + shift.hand()));
    }

    /** Whose last day is nearest comes first. */
    static final Comparator<Wanted> URGENT =
            Comparator.comparing(Wanted::window).thenComparing(Wanted::visit);

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }
}
