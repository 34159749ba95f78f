package changeover.scheduling.stopped;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** How a stop ends: the machine may be used again, or it no longer stands in the home. */
public enum StopEnd {
    IN_SERVICE,
    TAKEN_OUT;

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static StopEnd of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public static Set<String> codes() {
        return Arrays.stream(values()).map(StopEnd::code).collect(Collectors.toUnmodifiableSet());
    }
}
