package changeover.billing.serving;

import changeover.contracts.money.Money;
import java.util.List;

/**
 * The strictest rule that holds decides: so many days late and so much. Whoever is late without a rule that holds is served.
 */
public record ServingRules(List<Rule> rules) {

    /** @param least late in all, or more */
    public record Rule(Word what, int daysLate, Money least) {

        boolean holds(Money late, long days) {
            return days >= daysLate && late.compareTo(least) >= 0;
        }
    }

    public ServingRules {
        rules = List.copyOf(rules);
    }

    public Word of(Money late, long days) {
        return rules.stream()
                .filter(rule -> late.isPositive() && rule.holds(late, days))
                .map(Rule::what)
                .reduce(Word.SERVE, (one, other) -> one.compareTo(other) >= 0 ? one : other);
    }
}
