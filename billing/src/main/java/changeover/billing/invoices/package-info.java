/**
 * What a customer is asked to pay: drafts, issued documents with gapless numbers and a hash chain, credit notes.
 * Never here: a payment, a PDF, a mail, or any change to a document that was issued.
 */
@NullMarked
package changeover.billing.invoices;

import org.jspecify.annotations.NullMarked;
