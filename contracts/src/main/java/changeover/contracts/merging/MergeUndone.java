package changeover.contracts.merging;

import java.util.UUID;

/** Two homes that were made one are two again: what came along goes back. */
public record MergeUndone(UUID mergeId, UUID homeId, UUID otherId) {}
