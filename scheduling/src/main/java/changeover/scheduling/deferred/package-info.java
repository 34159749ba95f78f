/**
 * Readings that were put off because it was too cold outside, and the visit that takes them up. Never here: why else a task was put
 * off, or a visit made for one reading alone.
 */
@NullMarked
package changeover.scheduling.deferred;

import org.jspecify.annotations.NullMarked;
