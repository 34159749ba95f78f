package changeover.scheduling.visits;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A visit that has its day, promised to the customer or already made; a plan never moves it.
 *
 * @param takesMore whether further tasks may still be added to it; false once it is made
 */
public record Pin(UUID visitId, LocalDate day, boolean takesMore) {}
