/**
 * The businesses on this installation, the people who work in them, and the two locks between them.
 * Nothing here knows a customer, a machine or a price.
 */
@NullMarked
package changeover.contracts.tenants;

import org.jspecify.annotations.NullMarked;
