/**
 * The price book as a table: taken out, looked at, and brought in.
 * Never here: what a visit costs, or how a price came about.
 */
@NullMarked
package changeover.billing.pricesfile;

import org.jspecify.annotations.NullMarked;
