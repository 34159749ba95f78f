package changeover.contracts.calendar;

import changeover.contracts.calendar.Holidays.EasterDay;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;

/**
 * A business works on its weekdays, save the holidays of its place and the days it closes by its own choice
 * (the construction holidays, an inventory day).
 *
 * @param place ISO 3166-2, {@code CA-QC}
 * @param closed its own closed days
 */
public record WorkingDays(String place, Set<DayOfWeek> weekdays, EasterDay easterDay, Set<LocalDate> closed) {

    public WorkingDays {
        weekdays = Set.copyOf(weekdays);
        closed = Set.copyOf(closed);
        if (weekdays.isEmpty()) {
            throw new IllegalArgumentException("a week without a working day");
        }
    }

    /** Monday to Friday, closed on Good Friday where the choice is the employer's. */
    public static WorkingDays mondayToFriday(String place) {
        return new WorkingDays(
                place,
                Set.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY),
                EasterDay.GOOD_FRIDAY,
                Set.of());
    }

    public boolean isWorked(LocalDate day) {
        return weekdays.contains(day.getDayOfWeek())
                && !closed.contains(day)
                && !Holidays.isHoliday(place, day, easterDay);
    }

    /** The day itself when it is worked, else the first worked day after it. */
    public LocalDate onOrAfter(LocalDate day) {
        LocalDate worked = day;
        while (!isWorked(worked)) {
            worked = worked.plusDays(1);
        }
        return worked;
    }

    /** How many days of the window are worked. */
    public int count(Window window) {
        return (int)
                window.from().datesUntil(window.until()).filter(this::isWorked).count();
    }
}
