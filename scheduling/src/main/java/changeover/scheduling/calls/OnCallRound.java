package changeover.scheduling.calls;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiPredicate;

/**
 * Turns on call go round: each one named has a day or a week, then the next follows, and after the last the first again.
 * Whoever does not work here on those days is passed over; a day that has somebody already stays theirs.
 *
 * @param order who follows whom
 * @param days from the first to the last turn; weeks begin on the weekday of the first
 */
public record OnCallRound(List<UUID> order, Span span, Window days) {

    /** So many days ahead at most. */
    public static final int LONGEST = 366;

    /** How long one turn is. */
    public enum Span {
        DAY(1),
        WEEK(7);

        private final int days;

        Span(int days) {
            this.days = days;
        }
    }

    /** One's days on call, one after the other. */
    public record Turn(UUID person, Window days) {}

    /** @param open days on which nobody of the round works here */
    public record Laid(List<Turn> turns, List<Window> open) {

        public Laid {
            turns = List.copyOf(turns);
            open = List.copyOf(open);
        }
    }

    public OnCallRound {
        order = List.copyOf(order);
        if (order.isEmpty()) {
            throw new IllegalArgumentException("a round of nobody");
        }
    }

    /**
     * @param works whether somebody works here on a day
     * @param taken days that have somebody
     */
    Laid turns(BiPredicate<UUID, LocalDate> works, List<Window> taken) {
        List<Turn> turns = new ArrayList<>();
        List<Window> open = new ArrayList<>();
        int next = 0;
        for (LocalDate from = days.from(); from.isBefore(days.until()); from = from.plusDays(span.days)) {
            LocalDate until = from.plusDays(span.days);
            Window turn = new Window(from, until.isBefore(days.until()) ? until : days.until());
            List<Window> free = free(turn, taken);
            if (!free.isEmpty()) {
                Optional<Integer> place = whoCan(next, free, works);
                if (place.isPresent()) {
                    UUID person = order.get(place.get());
                    free.forEach(run -> turns.add(new Turn(person, run)));
                    next = (place.get() + 1) % order.size();
                } else {
                    open.addAll(free);
                }
            }
        }
        return new Laid(turns, open);
    }

    private Optional<Integer> whoCan(int first, List<Window> free, BiPredicate<UUID, LocalDate> works) {
        for (int step = 0; step < order.size(); step++) {
            int place = (first + step) % order.size();
            UUID person = order.get(place);
            if (free.stream().allMatch(run -> works.test(person, run.from()) && works.test(person, run.last()))) {
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }

    /** The runs of days in a turn that have nobody yet. */
    private static List<Window> free(Window turn, List<Window> taken) {
        List<Window> free = new ArrayList<>();
        LocalDate from = turn.from();
        for (Window one : taken.stream().filter(turn::meets).sorted().toList()) {
            if (from.isBefore(one.from())) {
                free.add(new Window(from, one.from()));
            }
            from = one.until();
        }
        if (from.isBefore(turn.until())) {
            free.add(new Window(from, turn.until()));
        }
        return free;
    }
}
