package changeover.scheduling.dayplan;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A promise of the season that no visit keeps.
 *
 * @param last the last day of its window
 */
public record SeasonUnkept(
        UUID home, UUID agreement, String task, Wording wording, LocalDate first, LocalDate last, Wording why) {}
