package changeover.scheduling.reviews;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A closure that waited was looked over: its report and its draft may leave.
 *
 * @param day on which the visit was closed
 * @param version of the closure that was looked at
 */
public record ClosureReviewed(UUID visitId, UUID homeId, LocalDate day, int version) {}
