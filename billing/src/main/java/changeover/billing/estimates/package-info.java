/**
 * What a repair would cost, offered and then accepted or refused, and the deposit asked for it.
 * Never here: an issued document; an accepted estimate hands its facts to the invoices.
 */
@NullMarked
package changeover.billing.estimates;

import org.jspecify.annotations.NullMarked;
