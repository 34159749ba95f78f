/**
 * What is earned and what is only prepaid, for the accountant.
 * Never here: an amount that no document or closed visit stands behind.
 */
@NullMarked
package changeover.billing.ledger;

import org.jspecify.annotations.NullMarked;
