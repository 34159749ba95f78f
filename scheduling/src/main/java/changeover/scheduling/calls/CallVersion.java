package changeover.scheduling.calls;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What stood of a call from an hour on, by whom, and why it took the place of what stood before.
 *
 * @param why null for what was written down first
 */
public record CallVersion(
        Call.Facts facts,
        @Nullable String by,
        Instant at,
        @Nullable String why) {}
