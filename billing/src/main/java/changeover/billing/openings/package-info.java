/**
 * What customers owed when the shop was taken over.
 * Nothing here is a document of ours: it is on statements and in balances, and in no tax report, reminder or journal.
 */
@NullMarked
package changeover.billing.openings;

import org.jspecify.annotations.NullMarked;
