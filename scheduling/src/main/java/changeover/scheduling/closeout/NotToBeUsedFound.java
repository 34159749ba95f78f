package changeover.scheduling.closeout;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * At a visit something was found that must not be used. It is told as soon as it is said, before the visit is closed, and never
 * taken back: a finding may be corrected, what was stopped stays so.
 */
public record NotToBeUsedFound(UUID visitId, UUID homeId, LocalDate day, List<Seen> findings) {

    public NotToBeUsedFound {
        findings = List.copyOf(findings);
    }

    /**
     * @param by who said it
     * @param ticket as said, else as its task asks; null for neither
     * @param sentence code of one of the business's sentences, or null with {@code text} and its {@code language}
     */
    public record Seen(
            UUID id,
            UUID by,
            Instant at,
            @Nullable UUID equipmentId,
            @Nullable String ticket,
            @Nullable String sentence,
            @Nullable String text,
            @Nullable String language) {}
}
