/**
 * Several lists of a running shop brought at once, each recognised by its titles.
 * Nothing here knows what a list says; whoever keeps its rows reads it.
 */
@NullMarked
package changeover.contracts.broughtfiles;

import org.jspecify.annotations.NullMarked;
