package changeover.contracts.merging;

import java.time.LocalDate;
import java.util.UUID;

/**
 * Two homes were made one: what is still to come at the other one comes to the home that lives on.
 *
 * @param homeId which lives on
 */
public record HomesMerged(UUID mergeId, UUID homeId, UUID otherId, LocalDate day) {}
