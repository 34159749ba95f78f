package changeover.billing.ledger;

import changeover.contracts.money.Money;

/**
 * One thing a plan promises, with what it would cost alone.
 *
 * @param name the only one of its name in the agreement
 * @param alone its price when it is sold by itself, never below nought
 */
public record Promised(String name, Money alone, Earned earned) {

    /** When its share of the plan's price is earned. */
    public enum Earned {
        /** A visit, or parts handed over: on the day it is done. */
        WHEN_DONE,
        /** Standing ready, repairs covered: day by day over the term. */
        BY_DAY
    }

    public Promised {
        if (name.isBlank()) {
            throw new IllegalArgumentException("Each promise needs a name.");
        }
        if (alone.isNegative()) {
            throw new IllegalArgumentException("The price of " + name + " alone cannot be below nought.");
        }
    }
}
