package changeover.billing.tax;

import java.util.Locale;

/** What is done for the money: upkeep on a schedule, mending what is broken, putting in something new, or none: a fee. */
public enum Work {
    MAINTENANCE,
    REPAIR,
    INSTALLATION,
    FEE;

    public static Work of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
