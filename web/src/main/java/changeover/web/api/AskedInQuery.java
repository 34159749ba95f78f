package changeover.web.api;

import changeover.billing.ledger.Period;
import changeover.contracts.words.Refusal;
import changeover.web.session.Typed;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What stands behind the question mark of an address: a day, a word, an id; what is not understood is refused there. */
final class AskedInQuery {

    private AskedInQuery() {}

    /** A day as {@code 2026-10-15}, in the four-digit years. */
    static LocalDate day(String name, String said) {
        try {
            return Typed.readDay(said.strip());
        } catch (DateTimeException notADay) {
            throw Refusal.of("typed.day").at(name).thrown();
        }
    }

    /** The days from and until, the last one in; without both the last quarter that is over. */
    static Period period(@Nullable String from, @Nullable String until, LocalDate today) {
        return Period.asked(from == null ? null : day("from", from), until == null ? null : day("until", until), today);
    }

    static @Nullable String oneOf(String name, @Nullable String said, Set<String> words) {
        if (said == null || said.isBlank()) {
            return null;
        }
        if (!words.contains(said)) {
            throw Refusal.of(
                            "typed.one-of",
                            Map.of(
                                    "words",
                                    String.join(", ", words.stream().sorted().toList())))
                    .at(name)
                    .thrown();
        }
        return said;
    }

    /** An id that names nothing is found nowhere, so what is no id is not found either. */
    static @Nullable UUID id(@Nullable String said) {
        if (said == null || said.isBlank()) {
            return null;
        }
        try {
            return UUID.fromString(said.strip());
        } catch (IllegalArgumentException notAnId) {
            return new UUID(0, 0);
        }
    }
}
