/**
 * What the crew is told about a home whose payer is late: serve, ask the office first, or do not serve.
 * Never here: how much is owed.
 */
@NullMarked
package changeover.billing.serving;

import org.jspecify.annotations.NullMarked;
