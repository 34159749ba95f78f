package changeover.scheduling.instruments;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An instrument reads true until the last day of its calibration; one that was never calibrated says so.
 *
 * @param calibratedUntil the last day of its latest calibration; null where none was ever written
 * @param holder who has it; null for the shop
 */
public record Instrument(
        UUID id,
        String name,
        String serial,
        @Nullable LocalDate calibratedUntil,
        @Nullable UUID holder,
        @Nullable String holderName) {

    /** How many days before the last one somebody is told. */
    public static final int SPOKEN_OF_DAYS = 30;

    /** Whether what it reads on that day is flagged. */
    public boolean isOver(LocalDate day) {
        return calibratedUntil == null || calibratedUntil.isBefore(day);
    }

    /** Whether somebody must see to it. */
    public boolean isSpokenOf(LocalDate day) {
        return calibratedUntil == null || !day.isBefore(calibratedUntil.minusDays(SPOKEN_OF_DAYS));
    }
}
