/**
 * The business's own papers: what they say, until when they hold, to whom they were sent. Papers of customers never belong
 * here.
 */
@NullMarked
package changeover.billing.papers;

import org.jspecify.annotations.NullMarked;
