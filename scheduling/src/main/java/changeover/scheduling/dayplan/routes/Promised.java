package changeover.scheduling.dayplan.routes;

import java.util.UUID;

/**
 * An hour that a customer was told: this technician begins then, and no plan moves either.
 *
 * @param starts second of the day
 */
public record Promised(UUID technician, int starts) {}
