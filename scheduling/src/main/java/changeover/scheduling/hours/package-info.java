/** The hours that somebody worked in a week, read from closed visits, corrected and signed by them. Wages never belong here. */
@NullMarked
package changeover.scheduling.hours;

import org.jspecify.annotations.NullMarked;
