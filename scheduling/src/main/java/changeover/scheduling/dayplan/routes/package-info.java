/**
 * Who drives where in which order on one day: the homes to visit, the turns of the crew, and the least driving that
 * keeps every promised hour. Never here: on which day a visit falls, or anything that reads or writes a row.
 */
@NullMarked
package changeover.scheduling.dayplan.routes;

import org.jspecify.annotations.NullMarked;
