package changeover.contracts.catalogue;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Something that a business added to the catalogue, with the version that its form is filled on.
 *
 * @param withdrawnOn the day since which it is not offered; null while it is
 * @param <T> a kind, a task or an interval
 */
public record OwnRow<T>(
        UUID id, T body, int version, @Nullable LocalDate withdrawnOn) {}
