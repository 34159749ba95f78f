package changeover.scheduling.calls;

import changeover.contracts.words.Wording;
import java.util.Locale;

/** Whether the home is heated while they ring. */
public enum Heat {
    YES("There is heat", "Il y a du chauffage"),
    NO("There is no heat", "Il n’y a pas de chauffage"),
    UNKNOWN("Whether there is heat was not said", "On ne sait pas s’il y a du chauffage");

    private final Wording wording;

    Heat(String en, String fr) {
        wording = new Wording(en, fr);
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Heat ofCode(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }
}
