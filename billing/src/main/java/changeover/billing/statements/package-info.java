/**
 * Statements of customers for a period: made one by one or for a month in one go, kept as they were made, and sent.
 * Never here: a change to what is owed.
 */
@NullMarked
package changeover.billing.statements;

import org.jspecify.annotations.NullMarked;
