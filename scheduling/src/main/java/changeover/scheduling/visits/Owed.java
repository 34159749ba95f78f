package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Who;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A promise with its place in the list it came in, so that a visit's tasks keep that order.
 *
 * @param place from nought; below nought for what a visit with a day holds already
 * @param rank its place among all that is owed, what closes first at the head: this decides, the order it came in never
 */
record Owed(int place, int rank, Promise promise) {

    static final Comparator<Owed> BY_DEADLINE = Comparator.comparingInt(Owed::rank);

    Window window() {
        return promise.window();
    }

    int minutes() {
        return promise.minutes();
    }

    /** The technician's part of the promises, what closes first at the head. */
    static List<Owed> byTechnicians(List<Promise> promises) {
        List<Owed> some = new ArrayList<>(promises.size());
        for (int place = 0; place < promises.size(); place++) {
            if (promises.get(place).who() == Who.TECHNICIAN) {
                some.add(new Owed(place, 0, promises.get(place)));
            }
        }
        some.sort((one, other) -> Promise.byDeadline(one.promise, other.promise));
        List<Owed> owed = new ArrayList<>(some.size());
        for (Owed one : some) {
            owed.add(new Owed(one.place, owed.size(), one.promise));
        }
        return owed;
    }
}
