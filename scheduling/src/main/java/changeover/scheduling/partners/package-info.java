/**
 * Licensed partners: their trade, their papers, and the visits that were given to them. What was done at a visit never
 * belongs here.
 */
@NullMarked
package changeover.scheduling.partners;

import org.jspecify.annotations.NullMarked;
