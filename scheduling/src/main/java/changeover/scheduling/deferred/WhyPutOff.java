package changeover.scheduling.deferred;

import changeover.contracts.calendar.Season;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Whether a reading was put off for the cold: as the technician said; where nobody said, by the thermometer of that visit;
 * without one it was cold outside the warm months. For anything else a trip of its own may be owed.
 *
 * @param on the day on which it was put off
 * @param cause cold or other; null where nobody said
 * @param outdoor degrees Celsius that were read at the visit; null where nobody read them
 * @param needed degrees Celsius that the reading asks for
 */
record WhyPutOff(
        LocalDate on, @Nullable String cause, @Nullable BigDecimal outdoor, BigDecimal needed) {

    static final String COLD = "cold";

    boolean cold(Season warm) {
        if (cause != null) {
            return cause.equals(COLD);
        }
        return outdoor == null ? !warm.contains(on) : outdoor.compareTo(needed) < 0;
    }
}
