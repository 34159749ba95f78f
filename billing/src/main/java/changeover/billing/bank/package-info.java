/**
 * What the bank's files say came in and went out, what each line may be, and what a person said it is.
 * Never here: a payment without a person's yes.
 */
@NullMarked
package changeover.billing.bank;

import org.jspecify.annotations.NullMarked;
