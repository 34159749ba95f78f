package changeover.billing.ledger;

import changeover.contracts.money.Money;
import java.util.List;

/**
 * Promises that are regularly sold together for less than each alone: the discount is theirs, and no other promise's
 * (IFRS 15, paragraph 82).
 */
public record SoldTogether(List<String> names, Money price) {

    public SoldTogether {
        names = List.copyOf(names);
        if (names.size() < 2 || !price.isPositive()) {
            throw new IllegalArgumentException("Two promises or more are sold together, for a price above nought.");
        }
    }
}
