/**
 * Which taxes a document carries: a dated table by the place of the work, with the source of every row.
 * Never here: a price, a customer, or a rate without its source.
 */
@NullMarked
package changeover.billing.tax;

import org.jspecify.annotations.NullMarked;
