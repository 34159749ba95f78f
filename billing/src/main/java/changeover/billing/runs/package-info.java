/**
 * Billing runs: all drafts that may be issued on a day, issued in batches that survive a crash.
 * Never here: how a document gets its number or its taxes; a run issues through the same door as one person does.
 */
@NullMarked
package changeover.billing.runs;

import org.jspecify.annotations.NullMarked;
