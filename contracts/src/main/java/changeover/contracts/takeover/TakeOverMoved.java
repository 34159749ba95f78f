package changeover.contracts.takeover;

import java.time.LocalDate;

/** The take-over is on another day than was said before. */
public record TakeOverMoved(LocalDate from, LocalDate to) {}
