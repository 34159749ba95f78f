package changeover.scheduling.households;

import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.OwnIntervals;
import changeover.scheduling.intervals.FilterLog;
import changeover.scheduling.intervals.HouseholdInterval;
import changeover.scheduling.intervals.Limits;
import changeover.scheduling.intervals.OtherHomes;
import changeover.scheduling.intervals.Prior;
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
import org.jspecify.annotations.Nullable;

/** The rhythm of each filter slot of the current business's homes, from what was seen there and in homes alike. */
@ApplicationScoped
public class SlotRhythms {

    /** Other homes asked, the latest seen: more of them change the belief little. */
    private static final int OTHERS = 16;

    /** No home is left out. */
    private static final UUID EVERY_HOME = new UUID(0, 0);

    @Inject
    FilterSlots slots;

    @Inject
    FilterLooks looks;

    @Inject
    AcceptedChance chance;

    @Inject
    OwnIntervals intervals;

    private record Alike(UUID home, String thickness, String rating, Limits limits) {}

    private record Belief(Prior.Weak weak, int homes) {}

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
        Map<Alike, Belief> beliefs = new HashMap<>();
        Map<Alike, HouseholdInterval> unseen = new HashMap<>();
        List<SlotRhythm> rhythms = new ArrayList<>();
        for (SlotSeen one : seenOf(some)) {
            FilterSlot slot = one.slot();
            var alike = new Alike(EVERY_HOME, slot.thickness(), slot.rating(), slot.limits());
            Belief belief = beliefs.computeIfAbsent(alike, _ -> belief(slot.in(EVERY_HOME)));
            HouseholdInterval learned = one.seen().isEmpty()
                    ? unseen.computeIfAbsent(
                            alike, _ -> HouseholdInterval.of(List.of(), belief.weak, slot.limits(), accepted))
                    : HouseholdInterval.of(one.seen(), belief.weak, slot.limits(), accepted);
            rhythms.add(new SlotRhythm(one, learned, belief.homes));
        }
        return List.copyOf(rhythms);
    }

    List<SlotRhythm> learned(List<SlotSeen> all) {
        double accepted = all.isEmpty() ? 0 : chance.percent() / 100.0;
        Map<Alike, Belief> beliefs = new HashMap<>();
        List<SlotRhythm> rhythms = new ArrayList<>();
        for (SlotSeen one : all) {
            FilterSlot slot = one.slot();
            Belief belief = beliefs.computeIfAbsent(
                    new Alike(slot.homeId(), slot.thickness(), slot.rating(), slot.limits()), _ -> belief(slot));
            rhythms.add(new SlotRhythm(
                    one, HouseholdInterval.of(one.seen(), belief.weak, slot.limits(), accepted), belief.homes));
        }
        return List.copyOf(rhythms);
    }

    /** What was seen of the filters of one slot; a change that two told counts once. */
    static List<Seen> seen(List<FilterLooks.Told> told) {
        return FilterLog.seen(told.stream().map(FilterLooks.Told::look).toList());
    }

    private Belief belief(FilterSlot slot) {
        List<FilterSlot> alike = slots.alike(slot, OTHERS);
        Map<UUID, List<Seen>> homes = new HashMap<>();
        looks.of(alike).values().forEach(told -> {
            List<Seen> seen = seen(told);
            if (!seen.isEmpty()) {
                UUID home = alike.stream()
                        .filter(one -> one.id().equals(told.getFirst().slot()))
                        .map(FilterSlot::homeId)
                        .findFirst()
                        .orElseThrow();
                homes.computeIfAbsent(home, _ -> new ArrayList<>()).addAll(seen);
            }
        });
        List<List<Seen>> seen = homes.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .toList();
        return new Belief(OtherHomes.belief(seen, Prior.ofTheTrade(slot.limits())), seen.size());
    }

    private static @Nullable Interval word(FilterSlot slot, List<Interval> words) {
        return words.stream()
                .filter(one ->
                        slot.id().equals(one.equipmentId()) && one.taskCode().equals(slot.taskCode()))
                .findFirst()
                .orElse(null);
    }
}
