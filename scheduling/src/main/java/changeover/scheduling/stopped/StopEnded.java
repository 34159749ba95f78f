package changeover.scheduling.stopped;

import java.util.UUID;

/** Somebody with the ticket put a machine back in service, or took it out. */
public record StopEnded(UUID stop, StopEnd how) {}
