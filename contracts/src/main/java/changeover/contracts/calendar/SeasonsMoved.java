package changeover.contracts.calendar;

import java.util.UUID;

/** A business has written, moved or taken away a season; what was drawn from them before is out of date. */
public record SeasonsMoved(UUID tenantId) {}
