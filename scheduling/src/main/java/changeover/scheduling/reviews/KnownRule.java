package changeover.scheduling.reviews;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A rule of the business with who it names.
 *
 * @param person name; empty for everybody
 * @param ended the day on which somebody ended it; null while it stands
 */
public record KnownRule(
        UUID id, ReviewRule rule, String person, @Nullable LocalDate ended) {}
