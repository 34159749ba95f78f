/**
 * The ladder by which a business reminds those who are late, what it wrote, and whom it holds back from reminding.
 * Never here: a mail that leaves, or a decision about what is owed.
 */
@NullMarked
package changeover.billing.reminders;

import org.jspecify.annotations.NullMarked;
