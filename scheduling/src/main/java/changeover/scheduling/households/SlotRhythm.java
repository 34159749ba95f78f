package changeover.scheduling.households;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Interval;
import changeover.scheduling.intervals.HouseholdInterval;
import changeover.scheduling.intervals.Rhythm;

/**
 * When a home's filter should be looked at and changed, from what was seen there and a weak belief from elsewhere.
 *
 * @param others how many other homes the belief comes from
 */
public record SlotRhythm(SlotSeen seen, HouseholdInterval learned, int others) {

    public FilterSlot slot() {
        return seen.slot();
    }

    /** What the household's list follows, of a task that was sold so. */
    public Cadence followed(Cadence sold) {
        Interval word = seen.word();
        if (word != null) {
            return word.cadence();
        }
        return seen.follows() == SlotSeen.Follows.LEARNED ? recommended() : sold;
    }

    public Cadence.LookThenChange recommended() {
        Rhythm rhythm = learned.rhythm();
        return new Cadence.LookThenChange(rhythm.checkAfterDays(), rhythm.changeAfterDays());
    }
}
