package changeover.scheduling.visits;

import changeover.contracts.catalogue.LongestVisit;
import java.util.List;

/**
 * Which task goes to which visit: first to those that have their day, then to as few new ones as can be; where only so
 * many new ones may be made, as much as can be is kept. A visit has a day that all its tasks may be done on, and is no
 * longer than a visit may be.
 *
 * @param tasks what closes first at the head
 * @param pins the visits that have their day, in the order of their days; what they hold stays
 * @param atMost new visits
 */
record Packing(List<Owed> tasks, List<VisitDraft> pins, int atMost, LongestVisit longest) {

    Packing {
        tasks = List.copyOf(tasks);
        pins = List.copyOf(pins);
    }

    /**
     * Days alone are asked first: what they give is right for the bound too when no visit is too long. Then the quick
     * way, which is often known to be the best; only then, and only for few tasks, every way there is.
     */
    Packed packed() {
        Packed byDays = FewestVisits.packed(this);
        if (!longest.isBounded() || byDays.isWithin(this)) {
            return byDays;
        }
        Packed quick = PackedQuickly.of(this);
        return quick.proof() == Proof.FEWEST || tasks.size() > PackedExactly.TASKS ? quick : PackedExactly.of(this);
    }
}
