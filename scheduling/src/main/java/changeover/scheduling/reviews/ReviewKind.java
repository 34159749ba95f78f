package changeover.scheduling.reviews;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What a closure is held for: who closed it, how grave it is, how new they are, or that somebody learns beside them. */
public enum ReviewKind {
    TECHNICIAN,
    SEVERITY,
    FIRST,
    BESIDE;

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static ReviewKind of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public static Set<String> codes() {
        return Arrays.stream(values()).map(ReviewKind::code).collect(Collectors.toUnmodifiableSet());
    }
}
