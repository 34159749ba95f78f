package changeover.scheduling.stopped;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Somebody stops a machine.
 *
 * @param equipmentId a machine of the home or of its building; null where it is no one machine
 * @param visitId where it was seen; null when the office writes it down
 * @param seen smell, soot, an alarm: in words
 * @param language en or fr, of the words
 * @param shutOff what a household may shut off and was shut off; null where nothing was yet
 * @param ticket that may restore it; null for the one its kind asks for
 */
public record NewStop(
        UUID homeId,
        @Nullable UUID equipmentId,
        @Nullable UUID visitId,
        String seen,
        String language,
        @Nullable String shutOff,
        @Nullable String ticket) {}
