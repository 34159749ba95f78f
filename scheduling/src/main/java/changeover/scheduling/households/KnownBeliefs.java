package changeover.scheduling.households;

import changeover.scheduling.intervals.OtherHomes;
import changeover.scheduling.intervals.Prior;
import changeover.scheduling.intervals.Seen;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the same sights let one believe is reckoned once: homes are opened far more often than filters are looked at. It depends
 * on nothing but the sights, so it is the same for whoever asks.
 */
@ApplicationScoped
class KnownBeliefs {

    private static final int MOST = 256;

    private record From(List<List<Seen>> homes, Prior.Weak before) {}

    /** Those asked for last. */
    private static final class Lately extends LinkedHashMap<From, Prior.Weak> {
        private static final long serialVersionUID = 1;

        Lately() {
            super(MOST, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<From, Prior.Weak> eldest) {
            return size() > MOST;
        }
    }

    private final Map<From, Prior.Weak> known = Collections.synchronizedMap(new Lately());

    Prior.Weak of(List<List<Seen>> homes, Prior.Weak before) {
        var from = new From(homes, before);
        Prior.Weak now = known.get(from);
        if (now == null) {
            now = OtherHomes.belief(homes, before);
            known.put(from, now);
        }
        return now;
    }
}
