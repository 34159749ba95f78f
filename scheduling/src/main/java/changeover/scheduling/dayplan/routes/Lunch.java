package changeover.scheduling.dayplan.routes;

/**
 * A pause that nobody works through: it begins within its hours, on the road or at a home's door, never in the middle of
 * a visit.
 *
 * @param earliest the first second of the day at which it may begin
 * @param latest the last second of the day at which it may begin
 * @param seconds how long it lasts
 */
public record Lunch(int earliest, int latest, int seconds) {

    public Lunch {
        if (earliest < 0 || latest < earliest || seconds < 0) {
            throw new IllegalArgumentException(
                    "A lunch of %d s cannot begin between %d and %d".formatted(seconds, earliest, latest));
        }
    }
}
