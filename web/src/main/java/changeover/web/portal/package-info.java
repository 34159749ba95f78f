/**
 * What a customer sees of their own homes, behind a link that nobody can guess.
 * Nothing here writes a fact of the trade, and no price stands here that the reader is not asked to pay.
 */
@NullMarked
package changeover.web.portal;

import org.jspecify.annotations.NullMarked;
