/**
 * The day on which a running shop was taken over.
 * Nothing here brings rows in; it says the one day that everything taken over is counted from.
 */
@NullMarked
package changeover.contracts.takeover;

import org.jspecify.annotations.NullMarked;
