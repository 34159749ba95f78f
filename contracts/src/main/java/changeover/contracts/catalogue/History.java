package changeover.contracts.catalogue;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a task on one machine before the term begins.
 *
 * @param lastDone the last day it was done; null when nobody knows
 * @param promised windows that an earlier term already promised it in
 */
public record History(@Nullable LocalDate lastDone, List<Window> promised) {

    public static final History NONE = new History(null, List.of());

    public History {
        promised = List.copyOf(promised);
    }

    public static History doneOn(LocalDate day) {
        return new History(day, List.of());
    }

    /** Whether the season was already given: done in it, or promised in it by an earlier term. */
    boolean gave(Window season) {
        return (lastDone != null && season.contains(lastDone))
                || promised.stream().anyMatch(window -> window.meets(season));
    }
}
