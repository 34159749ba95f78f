/**
 * What it costs the business to keep its promises: its own figures of overhead and set-up, what a plan costs in a home, and what
 * kept visits cost against what they earned.
 * Never here: what a customer is asked, a document, or a tax.
 */
@NullMarked
package changeover.billing.costs;

import org.jspecify.annotations.NullMarked;
