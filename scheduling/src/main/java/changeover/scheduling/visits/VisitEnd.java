package changeover.scheduling.visits;

/** How a visit ended. */
public enum VisitEnd {
    /** Somebody was there and wrote down what they did. */
    CLOSED,
    /** It is no longer wanted. */
    CANCELLED,
    /** We were there and nobody let us in. */
    NO_ACCESS,
    /** We did not come. */
    NOT_KEPT;

    public String code() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public static VisitEnd ofCode(String code) {
        return valueOf(code.toUpperCase(java.util.Locale.ROOT));
    }
}
