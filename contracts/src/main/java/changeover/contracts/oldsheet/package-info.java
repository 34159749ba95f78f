/**
 * An old spreadsheet with one line a home: read as kindly as can be, shown, and brought in.
 * Nothing here guesses what may mean two things, and nothing here invoices, plans or sends.
 */
@NullMarked
package changeover.contracts.oldsheet;

import org.jspecify.annotations.NullMarked;
