/**
 * The register: customers, buildings, homes, who plays which part in a home, its machines, keys and hazards.
 * No plan, visit or price belongs here, and no secret of a home leaves here unread or in the clear.
 */
@NullMarked
package changeover.contracts.customers;

import org.jspecify.annotations.NullMarked;
