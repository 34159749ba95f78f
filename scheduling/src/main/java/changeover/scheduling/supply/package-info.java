/**
 * What the coming year will use up, by part and by month, with an honest range. Never here: what lies in stock, what is ordered,
 * or any price; binary fractions are chances only.
 */
@NullMarked
package changeover.scheduling.supply;

import org.jspecify.annotations.NullMarked;
