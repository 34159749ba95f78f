/**
 * The papers of the business: invoice, credit note, visit report, offer, house card, tags and letters, as PDF/A-3b made
 * after the commit from frozen facts and kept once.
 *
 * <p>Never here: a price, a tax or a limit worked out; a paper prints what it is given.
 */
@NullMarked
package changeover.billing.documents;

import org.jspecify.annotations.NullMarked;
