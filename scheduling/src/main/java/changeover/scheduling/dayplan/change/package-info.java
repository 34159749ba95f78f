/**
 * What becomes of a day that is given already: driven in a better order, one more visit fitted in, a technician who is ill.
 * Never here: an hour that a customer was told is moved.
 */
@NullMarked
package changeover.scheduling.dayplan.change;

import org.jspecify.annotations.NullMarked;
