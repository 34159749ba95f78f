/**
 * What happened at a visit: operations applied by one function, the rows that follow from them, and their amendment.
 * No page, no price and no tax belongs here; a closed visit is handed on as an event of ids and facts.
 */
@NullMarked
package changeover.scheduling.closeout;

import org.jspecify.annotations.NullMarked;
