/**
 * What readings are taken with: known by serial number, calibrated until a day, held by somebody. What was read never belongs
 * here.
 */
@NullMarked
package changeover.scheduling.instruments;

import org.jspecify.annotations.NullMarked;
