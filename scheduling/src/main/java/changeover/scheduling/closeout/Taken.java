package changeover.scheduling.closeout;

import java.time.Instant;
import java.util.UUID;

/**
 * An operation that was taken.
 *
 * @param device whose clock {@code at} was read from
 * @param by the person who said it
 */
record Taken(UUID id, String device, Instant at, UUID by, Operation operation) {}
