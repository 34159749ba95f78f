/**
 * The days up to which the books are closed, by whom, and their reopening with its reason.
 * Never here: what the books say.
 */
@NullMarked
package changeover.billing.periods;

import org.jspecify.annotations.NullMarked;
