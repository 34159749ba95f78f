/**
 * What is earned and what is only prepaid, which taxes were charged and paid, for the accountant.
 * Never here: an amount that no document, payment or closed visit stands behind.
 */
@NullMarked
package changeover.billing.ledger;

import org.jspecify.annotations.NullMarked;
