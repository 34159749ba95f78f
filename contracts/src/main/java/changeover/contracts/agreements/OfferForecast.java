package changeover.contracts.agreements;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What the year of an offer would look like, said before the yes: its visits, what they cannot keep, and which seasons of
 * this calendar year are over already.
 *
 * @param needed the fewest visits that would keep everything
 * @param minutes technicians' planning minutes of the whole year
 * @param parts which parts the year's visits use up
 */
public record OfferForecast(
        List<Visit> visits, int needed, int minutes, List<NotKept> unkept, List<Gone> gone, List<Part> parts) {

    public OfferForecast {
        visits = List.copyOf(visits);
        unkept = List.copyOf(unkept);
        gone = List.copyOf(gone);
        parts = List.copyOf(parts);
    }

    public record Visit(Window window, int minutes, int tasks) {}

    /** A task that so many visits cannot keep. */
    public record NotKept(@Nullable UUID equipmentId, String taskCode, Wording task, Window window, Wording why) {}

    /** A season of this calendar year that the term no longer meets, and when it is kept for the first time. */
    public record Gone(Wording season, Window window, Optional<Window> next) {}

    public record Part(String partKind, BigDecimal quantity) {}

    public boolean keepsEverything() {
        return unkept.isEmpty() && gone.isEmpty();
    }
}
