/**
 * How long somebody answers for work and parts: we, a part's maker, the law of a place; as the owner wrote it down, by day.
 * No price and no visit is known here.
 */
@NullMarked
package changeover.billing.warranties;

import org.jspecify.annotations.NullMarked;
