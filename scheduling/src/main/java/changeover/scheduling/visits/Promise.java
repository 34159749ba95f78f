package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import java.util.Comparator;
import java.util.UUID;

/**
 * One time that one task is owed on one machine, with the days it may be done on and the reason in words.
 *
 * @param minutes planning figure
 */
public record Promise(UUID equipmentId, String taskCode, Who who, int minutes, Due due, Wording reason) {

    private static final Comparator<Promise> BY_WHAT_THEY_ARE = Comparator.comparing(Promise::taskCode)
            .thenComparing(Promise::equipmentId)
            .thenComparingInt(Promise::minutes)
            .thenComparing(promise -> promise.due().act())
            .thenComparing(promise -> promise.due().on())
            .thenComparing(promise -> promise.reason().en());

    /** Of two that close on the same day the one that opens first, then by what they are: never by chance. */
    static int byDeadline(Promise one, Promise other) {
        int byDays = one.window().compareTo(other.window());
        return byDays == 0 ? BY_WHAT_THEY_ARE.compare(one, other) : byDays;
    }

    /** The same promise with one more reason after its own. */
    Promise because(Wording more) {
        return new Promise(
                equipmentId,
                taskCode,
                who,
                minutes,
                due,
                new Wording(reason.en() + " " + more.en(), reason.fr() + " " + more.fr()));
    }

    public Window window() {
        return due.window();
    }
}
