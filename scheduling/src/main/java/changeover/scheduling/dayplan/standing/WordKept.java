package changeover.scheduling.dayplan.standing;

/**
 * Of the visits that were due, how many we made as we had said. A visit that we did not come to, and a told hour that we
 * moved for our own sake, count against us; a closed door and a move that the customer asked for do not.
 *
 * @param made visits that were closed
 * @param notKept visits that we did not come to
 * @param movedByUs visits whose told hour we moved, and that we then came to or still will
 * @param movedByCustomer visits whose told hour moved because the customer asked
 * @param noAccess visits at which nobody let us in
 */
public record WordKept(int made, int notKept, int movedByUs, int movedByCustomer, int noAccess) {

    /** How many our word was given for and is judged by. */
    public int judged() {
        return made + notKept;
    }

    public int againstUs() {
        return notKept + movedByUs;
    }

    /** Whole percent of what is judged, rounded down so that a hundred means all. */
    public int percent() {
        return judged() == 0 ? 100 : Math.max(0, 100 * (judged() - againstUs()) / judged());
    }
}
