package changeover.scheduling.households;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.HouseholdAgain;
import changeover.scheduling.visits.HouseholdTaskDone;
import changeover.scheduling.visits.HouseholdTasks;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A household's list follows what happened: a filter changed early or late moves the next looks, a rhythm learned or decided
 * takes the place of the one that was sold. What belongs to a season stays in its season.
 */
@ApplicationScoped
public class HouseholdRounds {

    private static final Wording LOOK = new Wording(
            "Look at the filter; change it when it is grey", "Regarder le filtre; le remplacer s’il est gris");
    private static final Wording CHANGE = new Wording("Change the filter", "Remplacer le filtre");
    private static final Map<Due.Act, Wording> OWN_RHYTHM =
            Map.of(Due.Act.CHECK, LOOK, Due.Act.REPLACE, CHANGE, Due.Act.DO, CHANGE);

    @Inject
    HouseholdTasks tasks;

    @Inject
    FilterSlots slots;

    @Inject
    FilterLooks looks;

    @Inject
    SlotRhythms rhythms;

    @Inject
    HouseholdAgain again;

    @Inject
    OwnCatalogue trade;

    @Inject
    Today today;

    /** The household did a task of its list; of a filter it may say how it looked and whether it was changed. */
    public void done(UUID home, UUID task, FilterLooks.Telling told) {
        if (told.found() != null && !told.changed() && tasks.replaces(home, task)) {
            throw Refusal.of("household.look-or-new").at("changed").thrown();
        }
        tasks.machineOf(home, task)
                .filter(_ -> told.found() != null || told.changed())
                .flatMap(slots::find)
                .ifPresent(slot -> looks.tell(slot, told, task));
        tasks.done(home, task, told.day(), told.by());
    }

    /**
     * What was told of a filter by mistake counts no more, and the list is as if it had never been told; false when nothing of
     * the kind stands there.
     */
    public boolean takeBack(FilterSlot slot, UUID look) {
        if (!looks.takeBack(slot, look, today.day())) {
            return false;
        }
        wordEnded(slot);
        return true;
    }

    /** A list goes back to what was learned or sold; as it was sold, too, where no change is known. */
    public void wordEnded(FilterSlot slot) {
        List<SlotSeen> seen = rhythms.seenOf(List.of(slot));
        follow(seen);
        if (!follows(seen.getFirst())) {
            asSold(slot);
        }
    }

    /** What was decided is followed from the agreement's first day on, even where nobody knows of a change. */
    private static boolean follows(SlotSeen slot) {
        return slot.word() != null || slot.lastChange().isPresent();
    }

    /** The list of a filter of which no change is known any more. */
    private void asSold(FilterSlot slot) {
        OwnCatalogue.Own own = trade.read();
        for (HouseholdAgain.Owing owing : again.owed(List.of(slot.homeId()), List.of(slot.id()), today.day())) {
            if (owing.taskCode().equals(slot.taskCode())) {
                again.asSold(owing, words(owing.taskCode(), own), own.seasons(), today.day());
            }
        }
    }

    /** Lays the lists of these slots again; one of which no change is known and nothing was decided stays as it was laid. */
    public void follow(Collection<FilterSlot> slots) {
        follow(rhythms.seenOf(slots));
    }

    /** A list stays where a look came on its day, and one that follows what was sold where a change did. */
    void followOnItsDay(FilterSlot slot, LocalDate day) {
        follow(rhythms.seenOf(List.of(slot)).stream()
                .filter(one -> one.follows() != SlotSeen.Follows.SOLD)
                .filter(one -> one.lastChange()
                        .filter(told -> told.look().day().equals(day))
                        .isPresent())
                .toList());
    }

    private void follow(List<SlotSeen> all) {
        Map<UUID, SlotSeen> known = all.stream()
                .filter(HouseholdRounds::follows)
                .collect(Collectors.toMap(one -> one.slot().id(), Function.identity()));
        List<HouseholdAgain.Owing> owed = again
                .owed(
                        known.values().stream().map(one -> one.slot().homeId()).collect(Collectors.toUnmodifiableSet()),
                        known.keySet(),
                        today.day())
                .stream()
                .filter(one -> one.taskCode()
                        .equals(Objects.requireNonNull(known.get(one.unit()))
                                .slot()
                                .taskCode()))
                .toList();
        if (owed.isEmpty()) {
            return;
        }
        OwnCatalogue.Own own = trade.read();
        Map<UUID, Cadence> learned = learned(owed, known);
        for (HouseholdAgain.Owing owing : owed) {
            SlotSeen slot = Objects.requireNonNull(known.get(owing.unit()));
            Cadence cadence =
                    slot.word() != null ? slot.word().cadence() : learned.getOrDefault(owing.unit(), owing.sold());
            Map<Due.Act, Wording> words =
                    cadence instanceof Cadence.LookThenChange ? OWN_RHYTHM : words(owing.taskCode(), own);
            slot.lastChange()
                    .ifPresentOrElse(
                            told -> again.countFrom(owing, cadence, last(told), words, own.seasons(), today.day()),
                            () -> again.countFromTheFirstDay(owing, cadence, words, own.seasons(), today.day()));
        }
    }

    /** Reckoned only where a list follows it. */
    private Map<UUID, Cadence> learned(List<HouseholdAgain.Owing> owed, Map<UUID, SlotSeen> known) {
        return rhythms
                .learned(owed.stream()
                        .map(one -> Objects.requireNonNull(known.get(one.unit())))
                        .filter(one -> one.follows() == SlotSeen.Follows.LEARNED)
                        .distinct()
                        .toList())
                .stream()
                .collect(Collectors.toMap(one -> one.slot().id(), SlotRhythm::recommended));
    }

    private static HouseholdAgain.Last last(FilterLooks.Told told) {
        return new HouseholdAgain.Last(told.look().day(), told.name().isBlank() ? "?" : told.name());
    }

    /** A task other than a filter's, done on another day than it was due: what counts from the last time moves with it. */
    void moved(HouseholdTaskDone done, UUID unit) {
        OwnCatalogue.Own own = trade.read();
        for (HouseholdAgain.Owing owing : again.owed(List.of(done.homeId()), List.of(unit), today.day())) {
            if (owing.taskCode().equals(done.taskCode())) {
                again.countFrom(
                        owing,
                        owing.sold(),
                        new HouseholdAgain.Last(done.day(), done.by()),
                        words(owing.taskCode(), own),
                        own.seasons(),
                        today.day());
            }
        }
    }

    private static Map<Due.Act, Wording> words(String taskCode, OwnCatalogue.Own own) {
        Wording said = own.catalogue().findTask(taskCode).map(Task::wording).orElse(new Wording(taskCode, taskCode));
        return Arrays.stream(Due.Act.values()).collect(Collectors.toMap(Function.identity(), _ -> said));
    }
}
