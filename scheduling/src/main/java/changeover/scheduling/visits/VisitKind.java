package changeover.scheduling.visits;

/** Why somebody goes to a home at all. */
public enum VisitKind {
    /** A plan promised it. */
    PLAN,
    /** Somebody rang. */
    CALL,
    /** An earlier visit left something open. */
    RETURN,
    /** The household asked for more than its plan gives. */
    EXTRA;

    public String code() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public static VisitKind ofCode(String code) {
        return valueOf(code.toUpperCase(java.util.Locale.ROOT));
    }
}
