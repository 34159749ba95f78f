/**
 * What the trade does: kinds of equipment, tasks, how often, readings with their bands, parts and cautions, as data
 * with its sources. Never here: a customer's machine, a price, or the day on which anything is done.
 */
@NullMarked
package changeover.contracts.catalogue;

import org.jspecify.annotations.NullMarked;
