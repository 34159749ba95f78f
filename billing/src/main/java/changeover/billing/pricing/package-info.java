/**
 * What a part, an hour or a trip costs on a day, and what of a closed visit is included, discounted or billable.
 * Never here: a tax, a document number, or a payment.
 */
@NullMarked
package changeover.billing.pricing;

import org.jspecify.annotations.NullMarked;
