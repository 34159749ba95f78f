package changeover.scheduling.stopped;

import changeover.contracts.words.Refusal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where a stopped machine is the only heat and it freezes outside, it is said what heats the home tonight, and office and customer
 * are called.
 *
 * @param freezing as a person on the spot says
 * @param tonight what heats the home; null where nothing was said
 */
public record HeatAnswer(
        boolean onlyHeat,
        boolean freezing,
        @Nullable String tonight,
        @Nullable Called office,
        @Nullable Called customer) {

    /** Who was spoken to, and when. */
    public record Called(String who, Instant at) {

        /** Said by the hour alone: one that the clock has not shown today yet was yesterday's. */
        public static Called of(String who, LocalTime hour, LocalDateTime now, ZoneId zone) {
            LocalDate day = hour.isAfter(now.toLocalTime()) ? now.toLocalDate().minusDays(1) : now.toLocalDate();
            return new Called(who, day.atTime(hour).atZone(zone).toInstant());
        }
    }

    /** What is missing from the answer; nothing where the home has other heat or it does not freeze. */
    public List<Refusal> refusals() {
        List<Refusal> missing = new ArrayList<>();
        if (onlyHeat && freezing) {
            if (tonight == null || tonight.isBlank()) {
                missing.add(Refusal.of("stopped.heat-tonight").at("tonight"));
            }
            if (office == null) {
                missing.add(Refusal.of("stopped.heat-office").at("officeWho"));
            }
            if (customer == null) {
                missing.add(Refusal.of("stopped.heat-customer").at("customerWho"));
            }
        }
        return missing;
    }
}
