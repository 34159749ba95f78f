/**
 * What is still to come at a home moves with it when two homes are made one.
 * What happened is never moved.
 */
@NullMarked
package changeover.scheduling.merging;

import org.jspecify.annotations.NullMarked;
