package changeover.scheduling.orders;

import java.util.UUID;

/** A visit was made that finishes with its part what the first one could not. */
public record SecondVisitMade(UUID firstVisitId, UUID visitId) {}
