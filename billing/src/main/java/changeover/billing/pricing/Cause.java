package changeover.billing.pricing;

import java.util.Locale;

/** What a plan's cost comes from, in the order in which it is told. */
public enum Cause {
    /** The technician's minutes on the promised tasks. */
    TASKS,
    /** Parking, carrying in, covering floors, writing down: so many minutes at each visit. */
    SET_UP,
    /** From the shop to the home and back. */
    TRAVEL,
    /** The parts that the plan gives. */
    PARTS,
    /** The minutes of other work that the plan gives, all of them. */
    READY,
    /** Everything that is paid whether somebody works or not. */
    OVERHEAD;

    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
