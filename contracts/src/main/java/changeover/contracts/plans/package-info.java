/**
 * What a business offers: its own tiers, each with the tasks it promises, its visits, its parts and its price.
 * Nothing here knows a home, a customer or what was sold.
 */
@NullMarked
package changeover.contracts.plans;

import org.jspecify.annotations.NullMarked;
