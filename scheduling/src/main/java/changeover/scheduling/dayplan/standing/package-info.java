/**
 * How a visit's hour stands, what became of the hours it had, and how often the business kept its word. No hour is ever
 * given or moved here.
 */
@NullMarked
package changeover.scheduling.dayplan.standing;

import org.jspecify.annotations.NullMarked;
