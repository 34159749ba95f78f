package changeover.scheduling.households;

import changeover.scheduling.intervals.Limits;
import changeover.scheduling.intervals.Prior;
import changeover.scheduling.intervals.Seen;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What other homes with filters alike let one believe of a home's own, weakly: the slots seen last count, the home's own
 * never. Homes that learn from the same others share one belief.
 */
final class Beliefs {

    /** Other slots asked, the latest seen: more of them change the belief little. */
    private static final int OTHERS = 16;

    /** Of each sort so many are read: the others, and what one home may have of the sort itself. */
    static final int ASKED = 4 * OTHERS;

    record Belief(Prior.Weak weak, int homes) {}

    private record From(List<UUID> slots, Limits limits) {}

    private final KnownBeliefs reckoned;
    private final Map<String, List<FilterSlot>> watched;
    private final Map<UUID, List<Seen>> seen = new HashMap<>();
    private final Map<From, Belief> known = new HashMap<>();

    /** @param watched of each sort the latest seen first */
    Beliefs(KnownBeliefs reckoned, List<FilterSlot> watched, Map<UUID, List<FilterLooks.Told>> told) {
        this.reckoned = reckoned;
        this.watched = watched.stream().collect(Collectors.groupingBy(FilterSlot::sort));
        told.forEach((slot, looks) -> seen.put(slot, SlotRhythms.seen(looks)));
    }

    Belief of(FilterSlot slot) {
        List<FilterSlot> others = watched.getOrDefault(slot.sort(), List.of()).stream()
                .filter(one -> !one.homeId().equals(slot.homeId()))
                .limit(OTHERS)
                .toList();
        return known.computeIfAbsent(
                new From(others.stream().map(FilterSlot::id).toList(), slot.limits()), _ -> belief(others, slot));
    }

    private Belief belief(List<FilterSlot> others, FilterSlot slot) {
        Map<UUID, List<Seen>> homes = new TreeMap<>();
        for (FilterSlot other : others) {
            List<Seen> there = seen.getOrDefault(other.id(), List.of());
            if (!there.isEmpty()) {
                homes.merge(other.homeId(), there, Beliefs::both);
            }
        }
        return new Belief(reckoned.of(List.copyOf(homes.values()), Prior.ofTheTrade(slot.limits())), homes.size());
    }

    private static List<Seen> both(List<Seen> one, List<Seen> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }
}
