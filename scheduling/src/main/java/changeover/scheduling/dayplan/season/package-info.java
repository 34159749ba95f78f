/**
 * A whole season laid on the crew's days, what of it cannot be kept, and what would keep it. Never here: the order of a
 * day that stands, which is {@code routes}.
 */
@NullMarked
package changeover.scheduling.dayplan.season;

import org.jspecify.annotations.NullMarked;
