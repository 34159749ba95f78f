/**
 * The pages of the owner and the office.
 * Nothing here is known to the technician's, the customer's or the programs' side.
 */
@NullMarked
package changeover.web.office;

import org.jspecify.annotations.NullMarked;
