/**
 * The year's visits of each home, written once when an agreement is sold, each with its own copied checklist.
 * Never here: who goes on which day, what was found at the door, or any price.
 */
@NullMarked
package changeover.scheduling.visits;

import org.jspecify.annotations.NullMarked;
