/**
 * Amounts of money: exact minor units in one currency, with the rounding the tax offices ask for.
 * Never here: a binary fraction, a tax, a price, or anything that knows what the money is for.
 */
@NullMarked
package changeover.contracts.money;

import org.jspecify.annotations.NullMarked;
