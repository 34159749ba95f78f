/**
 * Money that came in and what is still owed, by customer and by age.
 * Never here: a change to an invoice; a payment stands beside the document it pays.
 */
@NullMarked
package changeover.billing.payments;

import org.jspecify.annotations.NullMarked;
