/**
 * Parts on order: what a visit waits for, from whom, what came of it, and what went back.
 * No price of a part is known here, only the credit that a supplier owes.
 */
@NullMarked
package changeover.scheduling.orders;

import org.jspecify.annotations.NullMarked;
