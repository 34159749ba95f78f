package changeover.scheduling.dayplan.season;

import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** The searches that this machine has begun, one a business: what befalls one business forgets no other's. */
final class SearchesAtHand {

    private record Begun(UUID run, Search search) {}

    private final Map<UUID, Begun> begun = new ConcurrentHashMap<>();

    /** The business's search for this run, begun where there was none; an earlier run's is forgotten. */
    Search of(UUID tenant, UUID run, Supplier<Search> begin) {
        Begun before = begun.get(tenant);
        if (before != null && before.run().equals(run)) {
            return before.search();
        }
        Search search = begin.get();
        begun.put(tenant, new Begun(run, search));
        return search;
    }

    boolean has(UUID tenant, UUID run) {
        Begun before = begun.get(tenant);
        return before != null && before.run().equals(run);
    }

    void forget(UUID tenant) {
        begun.remove(tenant);
    }

    void forget() {
        begun.clear();
    }
}
