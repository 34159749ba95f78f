package changeover.billing.tax;

import java.util.Locale;

/** What the building is used for: some places tax work on a dwelling otherwise than work on a shop. */
public enum PropertyUse {
    RESIDENTIAL,
    COMMERCIAL;

    /** By the code that the tables keep: {@code residential}, {@code commercial}. */
    public static PropertyUse of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
