/**
 * Who lets the business collect from their account, what is to be collected on a day, and that it was.
 * Never here: a word with a bank; a person collects and says so.
 */
@NullMarked
package changeover.billing.collection;

import org.jspecify.annotations.NullMarked;
