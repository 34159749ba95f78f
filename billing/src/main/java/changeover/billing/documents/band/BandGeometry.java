package changeover.billing.documents.band;

import changeover.billing.documents.band.HomeYear.Done;
import changeover.billing.documents.band.HomeYear.Standing;
import changeover.contracts.calendar.Changeover;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;

/**
 * The lines and marks of a year band: across in fractions of the twelve months (0 first day, 1 the day after the last), down in units.
 *
 * @param stripTop upper edge of the month strip; rings and today's label stand above it
 * @param base the line under the machines; the household's tasks stand below it
 */
public record BandGeometry(
        double stripTop,
        double stripBottom,
        double base,
        double height,
        List<MonthBox> months,
        List<TurnBox> turns,
        List<Name> names,
        List<Bracket> brackets,
        List<Ring> rings,
        List<Knot> knots,
        List<HouseholdLine> household,
        List<Thread> today) {

    /** At most this many of the household's tasks are drawn; the table has them all. */
    public static final int HOUSEHOLD_LINES = 4;

    /** One month of the strip; the year is written where it changes. */
    public record MonthBox(double from, double until, Month month, int year, boolean yearChanges) {}

    /** The weeks of a turn inside the twelve months. */
    public record TurnBox(Changeover kind, double from, double until) {}

    /** A machine's name beside (or above) the line at this height. */
    public record Name(String text, double y) {}

    /** A promise: end ticks only where its own first and last day lie inside the year. */
    public record Bracket(double from, double until, double y, boolean late, boolean opensHere, boolean endsHere) {}

    /** A visit's ring above the strip, and how far down its string goes. */
    public record Ring(double x, double y, LocalDate day, Standing standing, double stringEnd) {}

    /** Where a visit's string passes a machine that it serves. */
    public record Knot(double x, double y, Standing standing) {}

    /** One of the household's tasks. */
    public record HouseholdLine(String name, double y, List<HouseholdMark> marks) {}

    /** Done, to come or not done. */
    public record HouseholdMark(double x, Done done) {}

    /** Today's thread, and whether its label stands at its left; none when today lies outside the year. */
    public record Thread(double x, LocalDate day, boolean labelLeft) {}

    /** Lays the year out. */
    public static BandGeometry of(HomeYear year, BandShape shape) {
        return new BandLayout(year, shape).laidOut();
    }
}
