/**
 * Which technician is where on which day, in which order, with what in the van; and what the weeks ahead hold.
 * Never here: why a visit is due, or what happened at it.
 */
@NullMarked
package changeover.scheduling.dayplan;

import org.jspecify.annotations.NullMarked;
