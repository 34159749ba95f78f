/**
 * Free returns: we came back for our own work, to what, and why.
 * Nothing is charged or judged here, and nobody is ranked.
 */
@NullMarked
package changeover.scheduling.returns;

import org.jspecify.annotations.NullMarked;
