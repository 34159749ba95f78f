package changeover.scheduling.dayplan;

import changeover.contracts.words.Refusal;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An hour that the customer was told moves for a reason only, and the reason says who asked for it; an hour that nobody
 * was told moves as the office likes.
 */
public record Moving(By by, String why) {

    /** Who asked for it. */
    public enum By {
        CUSTOMER,
        /** We ourselves: it counts against us. */
        US;

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static By ofCode(String code) {
            return valueOf(code.toUpperCase(Locale.ROOT));
        }
    }

    public Moving {
        if (why.isBlank()) {
            throw new IllegalArgumentException("A reason has words");
        }
        why = why.strip();
    }

    /**
     * @param told whether the customer was told the hour that it has
     * @param anotherHour whether the day or the hour changes, or falls away; another technician alone is no other hour
     */
    public static Optional<Refusal> refusal(boolean told, boolean anotherHour, @Nullable Moving moving) {
        return told && anotherHour && moving == null
                ? Optional.of(Refusal.of("appointment.told-moves-for-a-reason").at("why"))
                : Optional.empty();
    }
}
