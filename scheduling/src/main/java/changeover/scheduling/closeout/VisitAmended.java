package changeover.scheduling.closeout;

import java.util.UUID;

/**
 * A closed visit has been corrected: drafts follow the new facts, a report that was sent gets the new version.
 *
 * @param version of the closure, 2 for the first amendment
 */
public record VisitAmended(UUID amendmentId, int version, VisitClosed before, VisitClosed now) {}
