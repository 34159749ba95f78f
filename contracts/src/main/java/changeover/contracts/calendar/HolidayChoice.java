package changeover.contracts.calendar;

import java.util.Set;

/**
 * Which holidays of its place a business keeps: those that are usual there, save those it works on, and others that it gives.
 *
 * @param worked codes of those that are usual and not kept
 * @param given codes of those that are kept without being usual
 */
public record HolidayChoice(Set<String> worked, Set<String> given) {

    public static final HolidayChoice USUAL = new HolidayChoice(Set.of(), Set.of());

    public HolidayChoice {
        worked = Set.copyOf(worked);
        given = Set.copyOf(given);
    }

    public boolean keeps(Holiday holiday) {
        return holiday.isUsual() ? !worked.contains(holiday.code()) : given.contains(holiday.code());
    }
}
