package changeover.scheduling.closeout;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What becomes of a task at a visit. */
public enum Outcome {
    DONE,
    NOT_APPLICABLE,
    DEFERRED;

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Outcome> ofCode(String code) {
        return Arrays.stream(values())
                .filter(outcome -> outcome.code().equals(code))
                .findFirst();
    }
}
