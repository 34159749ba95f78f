/**
 * By what bytes are known again without keeping them.
 *
 * <p>Never here: what is kept secret, or how.
 */
@NullMarked
package changeover.contracts.digests;

import org.jspecify.annotations.NullMarked;
