package changeover.scheduling.households;

import changeover.contracts.catalogue.Interval;
import changeover.scheduling.intervals.Look;
import changeover.scheduling.intervals.Seen;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was told of one slot, and whose rhythm its list follows: a person's word goes before what was learned here, and that
 * counts once two of the home's own filters were seen grey; before that it is done as it was sold.
 *
 * @param told in the order of the days
 * @param seen what that says of its filters' lives
 * @param word what a person decided for this slot; null when nobody did
 */
public record SlotSeen(
        FilterSlot slot,
        List<FilterLooks.Told> told,
        List<Seen> seen,
        @Nullable Interval word) {

    /** Sights of grey in this home before its own rhythm is followed. */
    public static final int LEARNED_AFTER = 2;

    /** Whose rhythm the household's list follows. */
    public enum Follows {
        WORD,
        LEARNED,
        SOLD
    }

    public SlotSeen {
        told = List.copyOf(told);
        seen = List.copyOf(seen);
    }

    public Follows follows() {
        if (word != null) {
            return Follows.WORD;
        }
        return greys() >= LEARNED_AFTER ? Follows.LEARNED : Follows.SOLD;
    }

    /** How often a filter of this home was seen grey. */
    public long greys() {
        return seen.stream().filter(one -> !(one instanceof Seen.CleanAt)).count();
    }

    /** The last time a new filter was put in, and who told; empty while nobody knows. */
    public Optional<FilterLooks.Told> lastChange() {
        return told.stream().filter(one -> one.look().what().change()).reduce(SlotSeen::later);
    }

    /** Of one day's two, the technician's. */
    private static FilterLooks.Told later(FilterLooks.Told one, FilterLooks.Told other) {
        int days = other.look().day().compareTo(one.look().day());
        return days > 0 || days == 0 && other.look().by() == Look.By.TECHNICIAN ? other : one;
    }
}
