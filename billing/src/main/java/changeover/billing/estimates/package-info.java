/**
 * What a repair will cost, said before it is made: offered, answered by a named person, and then the most its work may ask.
 * Never here: an issued document; the invoices ask through their own small interface what was accepted.
 */
@NullMarked
package changeover.billing.estimates;

import org.jspecify.annotations.NullMarked;
