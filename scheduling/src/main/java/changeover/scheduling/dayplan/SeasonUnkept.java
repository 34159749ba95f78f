package changeover.scheduling.dayplan;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A promise of the season that no visit keeps.
 *
 * @param address of the home, in one line
 * @param last the last day of its window
 */
public record SeasonUnkept(
        UUID home,
        String address,
        UUID agreement,
        String task,
        Wording wording,
        LocalDate first,
        LocalDate last,
        Wording why) {}
