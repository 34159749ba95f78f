/**
 * What leaves the building: messages written in the business's transaction, sent by mail or printed as letters after it.
 *
 * <p>Never here: a message sent inside a business transaction, or a decision about money.
 */
@NullMarked
package changeover.billing.notices;

import org.jspecify.annotations.NullMarked;
