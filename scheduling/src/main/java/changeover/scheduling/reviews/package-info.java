/**
 * Closures that wait until somebody looks them over, by the business's own rules.
 * What a closure says is corrected in close-out, and what must not be used is never kept back here.
 */
@NullMarked
package changeover.scheduling.reviews;

import org.jspecify.annotations.NullMarked;
