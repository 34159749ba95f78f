package changeover.billing.reminders;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a reminder speaks: it may have been forgotten, it is owed, or it is the last one. */
public enum Tone {
    FRIENDLY,
    FIRM,
    LAST;

    public static Optional<Tone> of(String code) {
        return Arrays.stream(values()).filter(tone -> tone.code().equals(code)).findFirst();
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
