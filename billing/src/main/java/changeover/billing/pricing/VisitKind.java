package changeover.billing.pricing;

import java.util.Locale;

/** Why we were there: as the plan promised, because somebody rang, to mend our own work, or for something more. */
public enum VisitKind {
    PLAN,
    CALL,
    RETURN,
    EXTRA;

    public static VisitKind of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }
}
