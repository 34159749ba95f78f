/**
 * How long a filter or a pad lasts in one home, learned from when it was seen clean and when it was seen grey.
 * Never here: a visit, a row, a clock, or money; these are the only binary fractions of the product.
 */
@NullMarked
package changeover.scheduling.intervals;

import org.jspecify.annotations.NullMarked;
