package changeover.billing.payments;

import java.util.Locale;

/** Where a document stands on a day. */
public enum Standing {
    /** A draft whose visit somebody looks over first. */
    REVIEW,
    /** A draft that may not be asked for before the agreement's first visit. */
    AWAITING,
    /** A draft whose lines have no price yet. */
    UNPRICED,
    /** A draft on which everything is included: nothing to issue. */
    NOTHING,
    /** A draft whose day has not come. */
    LATER,
    /** A draft that may be issued. */
    READY,
    OPEN,
    LATE,
    PAID,
    /** Nothing is open because credit notes took all of it back. */
    CREDITED,
    CREDIT,
    /** Nothing is open because what was open was written off. */
    GIVEN_UP;

    public static Standing of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public boolean isDraft() {
        return compareTo(OPEN) < 0;
    }
}
