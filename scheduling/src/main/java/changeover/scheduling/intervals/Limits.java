package changeover.scheduling.intervals;

import changeover.contracts.words.Wording;

/**
 * A filter is never looked at more often than once a month, and never left in longer than its unit's own label says; where
 * there is no label, three months for a filter of one inch and six for a deeper one.
 *
 * <p>Sources: ENERGY STAR's maintenance checklist for one inch (look monthly, change at the latest after three months);
 * six months is common practice.
 *
 * @param floorDays the shortest time to the first look
 * @param capDays the longest time to the change, never below the floor
 * @param basis what the longest time rests on
 */
public record Limits(int floorDays, int capDays, Wording basis) {

    /** A mean month of the calendar, in days. */
    public static final double MONTH_DAYS = 365.25 / 12;

    /** No calendar month is longer. */
    private static final int MONTH = 31;

    /** @param months 1 to 60 */
    public static Limits ofLabel(int months) {
        if (months < 1 || months > 60) {
            throw new IllegalArgumentException("A label names 1 to 60 months, not " + months + ".");
        }
        return months(months, new Wording("the label on the unit", "l’étiquette de l’appareil"));
    }

    /** @param inches above nought and at most 12 */
    public static Limits ofThickness(double inches) {
        if (!(inches > 0 && inches <= 12)) {
            throw new IllegalArgumentException(
                    "A filter's thickness is above nought and at most 12 inches, not " + inches + ".");
        }
        return inches < 1.5
                ? months(
                        3,
                        new Wording(
                                "published advice for filters of one inch",
                                "les conseils publiés pour les filtres d’un pouce"))
                : months(6, new Wording("common practice for deep filters", "l’usage pour les filtres épais"));
    }

    private static Limits months(int months, Wording basis) {
        return new Limits(MONTH, Math.max(MONTH, (int) (months * MONTH_DAYS)), basis);
    }
}
