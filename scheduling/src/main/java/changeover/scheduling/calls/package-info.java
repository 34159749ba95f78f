/**
 * Somebody rang: what they said, whether a plan covers it, and what became of it.
 * Never here: the year's promised visits, or what is charged.
 */
@NullMarked
package changeover.scheduling.calls;

import org.jspecify.annotations.NullMarked;
