package changeover.scheduling.households;

import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.OwnIntervals;
import changeover.scheduling.intervals.FilterLog;
import changeover.scheduling.intervals.HouseholdInterval;
import changeover.scheduling.intervals.Limits;
import changeover.scheduling.intervals.Seen;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The rhythm of each filter slot of the current business's homes, from what was seen there and in homes alike. */
@ApplicationScoped
public class SlotRhythms {

    /** No home is left out. */
    private static final UUID EVERY_HOME = new UUID(0, 0);

    @Inject
    FilterSlots slots;

    @Inject
    FilterLooks looks;

    @Inject
    KnownBeliefs reckoned;

    @Inject
    AcceptedChance chance;

    @Inject
    OwnIntervals intervals;

    private record Alike(String sort, Limits limits) {}

    public Optional<SlotRhythm> of(UUID slotId) {
        return slots.find(slotId).map(slot -> of(List.of(slot)).getFirst());
    }

    public List<SlotRhythm> ofHome(UUID homeId) {
        return of(slots.ofHomes(List.of(homeId)));
    }

    /** What was told of each and whose rhythm it follows, in the order of the slots; nothing is reckoned. */
    public List<SlotSeen> seenOf(Collection<FilterSlot> some) {
        Map<UUID, List<FilterLooks.Told>> told = looks.of(some);
        List<Interval> words = some.isEmpty() ? List.of() : intervals.all();
        return some.stream()
                .map(slot -> {
                    List<FilterLooks.Told> own = told.getOrDefault(slot.id(), List.of());
                    return new SlotSeen(slot, own, seen(own), word(slot, words));
                })
                .toList();
    }

    /** In the order of the slots. */
    public List<SlotRhythm> of(Collection<FilterSlot> some) {
        return learned(seenOf(some));
    }

    /** Of very many at once: what is believed of a filter of one sort is reckoned once, from all homes that were watched. */
    public List<SlotRhythm> together(Collection<FilterSlot> some) {
        double accepted = some.isEmpty() ? 0 : chance.percent() / 100.0;
        Beliefs beliefs = beliefs(some);
        Map<Alike, HouseholdInterval> unseen = new HashMap<>();
        List<SlotRhythm> rhythms = new ArrayList<>();
        for (SlotSeen one : seenOf(some)) {
            FilterSlot slot = one.slot();
            Beliefs.Belief belief = beliefs.of(slot.in(EVERY_HOME));
            HouseholdInterval learned = one.seen().isEmpty()
                    ? unseen.computeIfAbsent(
                            new Alike(slot.sort(), slot.limits()),
                            _ -> HouseholdInterval.of(List.of(), belief.weak(), slot.limits(), accepted))
                    : HouseholdInterval.of(one.seen(), belief.weak(), slot.limits(), accepted);
            rhythms.add(new SlotRhythm(one, learned, belief.homes()));
        }
        return List.copyOf(rhythms);
    }

    List<SlotRhythm> learned(List<SlotSeen> all) {
        double accepted = all.isEmpty() ? 0 : chance.percent() / 100.0;
        Beliefs beliefs = beliefs(all.stream().map(SlotSeen::slot).toList());
        return all.stream()
                .map(one -> {
                    Beliefs.Belief belief = beliefs.of(one.slot());
                    return new SlotRhythm(
                            one,
                            HouseholdInterval.of(
                                    one.seen(), belief.weak(), one.slot().limits(), accepted),
                            belief.homes());
                })
                .toList();
    }

    /** Two statements, however many slots are asked about. */
    private Beliefs beliefs(Collection<FilterSlot> some) {
        List<FilterSlot> watched = slots.watched(
                some.stream().map(FilterSlot::sort).collect(Collectors.toUnmodifiableSet()), Beliefs.ASKED);
        return new Beliefs(reckoned, watched, looks.of(watched));
    }

    /** What was seen of the filters of one slot; a change that two told counts once. */
    static List<Seen> seen(List<FilterLooks.Told> told) {
        return FilterLog.seen(told.stream().map(FilterLooks.Told::look).toList());
    }

    private static @Nullable Interval word(FilterSlot slot, List<Interval> words) {
        return words.stream()
                .filter(one ->
                        slot.id().equals(one.equipmentId()) && one.taskCode().equals(slot.taskCode()))
                .findFirst()
                .orElse(null);
    }
}
