/**
 * What a business asks beyond its work when a payment comes back or a reminder goes out, by place and day with its source.
 * Never here: whether money is owed, or a fee without a source.
 */
@NullMarked
package changeover.billing.fees;

import org.jspecify.annotations.NullMarked;
