package changeover.billing.tax;

import changeover.contracts.words.Wording;
import java.util.Locale;

/** What the building is used for: some places tax work on a dwelling otherwise than work on a shop. */
public enum PropertyUse {
    RESIDENTIAL(new Wording("residential", "résidentiel")),
    COMMERCIAL(new Wording("commercial", "commercial"));

    private final Wording wording;

    PropertyUse(Wording wording) {
        this.wording = wording;
    }

    /** By the code that the tables keep: {@code residential}, {@code commercial}. */
    public static PropertyUse of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Wording wording() {
        return wording;
    }
}
