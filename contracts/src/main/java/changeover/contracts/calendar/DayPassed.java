package changeover.contracts.calendar;

import java.time.LocalDate;

/**
 * A day is over for one business: what waits for the calendar (renewals, reminders, follow-ups) wakes up.
 *
 * @param day the day that has passed, in the business's own zone
 */
public record DayPassed(String tenantId, LocalDate day) {}
