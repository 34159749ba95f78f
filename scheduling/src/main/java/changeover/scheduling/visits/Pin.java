package changeover.scheduling.visits;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;

/**
 * A visit that has its day, promised to the customer or already made; a plan never moves it and takes nothing from it.
 *
 * @param takesMore whether further tasks may still be added to it; false once it is made
 * @param holds the work it has already, which nobody plans again
 */
public record Pin(UUID visitId, LocalDate day, boolean takesMore, List<Promise> holds) {

    static final Comparator<Pin> BY_DAY = Comparator.comparing(Pin::day)
            .thenComparing(pin -> !pin.takesMore())
            .thenComparingLong(
                    pin -> pin.holds().stream().mapToLong(Promise::minutes).sum())
            .thenComparing(Pin::visitId);

    public Pin {
        holds = List.copyOf(holds);
    }
}
