package changeover.scheduling.visits;

/** How much is known of a plan's visits being the fewest. */
public enum Proof {

    /** No plan keeps more in as many visits, nor as much in fewer. */
    FEWEST,

    /** Everything is kept, and at most one visit fewer could be enough. */
    WITHIN_ONE,

    /** The best that was found; whether fewer would do, or more could be kept, is not known. */
    NOT_PROVEN;

    public String code() {
        return switch (this) {
            case FEWEST -> "fewest";
            case WITHIN_ONE -> "within-one";
            case NOT_PROVEN -> "not-proven";
        };
    }
}
