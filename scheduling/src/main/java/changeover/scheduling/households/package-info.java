/**
 * What a household does between visits and what that teaches: how long its filters last, and when it should look again.
 * Never here: how the rhythm is reckoned (intervals), a technician's visit, or any price.
 */
@NullMarked
package changeover.scheduling.households;

import org.jspecify.annotations.NullMarked;
