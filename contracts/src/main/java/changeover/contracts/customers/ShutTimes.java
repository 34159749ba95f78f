package changeover.contracts.customers;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Nobody comes to a home while it is shut: a window of a visit is what is left of it, the longest run of open days. */
public record ShutTimes(List<Window> times) {

    public static final ShutTimes NEVER = new ShutTimes(List.of());

    private static final LocalDate FAR = LocalDate.of(9999, 1, 1);

    public ShutTimes {
        times = times.stream().sorted(Comparator.comparing(Window::from)).toList();
    }

    /** @param until null while nobody knows: then it counts as shut to the end */
    public static Window time(LocalDate from, @Nullable LocalDate until) {
        return new Window(from, until == null ? FAR : until);
    }

    public boolean isNever() {
        return times.isEmpty();
    }

    public boolean on(LocalDate day) {
        return times.stream().anyMatch(time -> time.contains(day));
    }

    /** The longest run of days on which it is open, the first of two equal ones; empty where it is shut throughout. */
    public Optional<Window> longestOpen(Window window) {
        var open = new ArrayList<Window>();
        LocalDate from = window.from();
        for (Window time : times) {
            if (from.isBefore(time.from()) && from.isBefore(window.until())) {
                open.add(new Window(from, earlier(time.from(), window.until())));
            }
            from = from.isBefore(time.until()) ? time.until() : from;
        }
        if (from.isBefore(window.until())) {
            open.add(new Window(from, window.until()));
        }
        return open.stream()
                .max(Comparator.comparing(Window::days).thenComparing(Window::from, Comparator.reverseOrder()));
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
