/**
 * Homes that look like one, and making one of two.
 * Nothing here is thrown away or written over: a merge is a row that says what moved, and undoing it moves it back.
 */
@NullMarked
package changeover.contracts.merging;

import org.jspecify.annotations.NullMarked;
