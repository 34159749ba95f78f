/**
 * Parts on the shelf and in the vans, kept as movements only; what is there is their sum.
 * No count is ever stored, and no price, customer or visit is known here beyond its id.
 */
@NullMarked
package changeover.scheduling.stock;

import org.jspecify.annotations.NullMarked;
