/**
 * What a part, an hour or a trip costs on a day, what of a closed visit is included, discounted or billable, and what a
 * year of a plan costs to keep.
 * Never here: a tax, a document number, or a payment.
 */
@NullMarked
package changeover.billing.pricing;

import org.jspecify.annotations.NullMarked;
