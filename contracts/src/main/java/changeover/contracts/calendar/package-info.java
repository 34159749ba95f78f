/**
 * Days as the trade counts them: windows, terms, seasons, holidays and the day that has passed.
 * Never here: a clock, a time zone read from the machine, or anything about customers and prices.
 */
@NullMarked
package changeover.contracts.calendar;

import org.jspecify.annotations.NullMarked;
