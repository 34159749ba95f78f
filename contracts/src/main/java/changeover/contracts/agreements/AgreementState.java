package changeover.contracts.agreements;

/** How an agreement stands on a day; computed from its rows, never stored. */
public enum AgreementState {
    /** Offered, and the offer still stands. */
    OFFERED,
    /** Offered, and nobody said yes in time. */
    LAPSED,
    /** Accepted; its term has not begun. */
    ACCEPTED,
    IN_FORCE,
    /** Ended before its term was over. */
    ENDED,
    /** Its term is over. */
    OVER;

    public String code() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
