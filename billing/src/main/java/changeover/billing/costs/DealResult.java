package changeover.billing.costs;

import changeover.billing.pricing.Cause;
import changeover.billing.pricing.PlanCost;
import changeover.contracts.money.Money;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What one agreement earned and what its visits cost.
 *
 * @param kept trips to the home, those for nothing too, and what was given between them
 */
public record DealResult(Deal deal, Money earned, List<VisitCost> kept) {

    public DealResult {
        kept = List.copyOf(kept);
    }

    /** Trips to the home, those for nothing too. */
    public int visits() {
        return (int) kept.stream().filter(one -> one.visit().isTrip()).count();
    }

    public Map<Cause, Money> causes() {
        Map<Cause, Money> causes = new EnumMap<>(Cause.class);
        kept.forEach(one -> one.cost().causes().forEach((cause, amount) -> causes.merge(cause, amount, Money::plus)));
        return causes;
    }

    public Money cost() {
        return Money.sum(kept.stream().map(VisitCost::total).toList(), earned.currency());
    }

    /** Costs that nobody wrote down: then it cost more than is said. */
    public List<PlanCost.Missing> missing() {
        Set<PlanCost.Missing> missing = new LinkedHashSet<>();
        kept.forEach(one -> missing.addAll(one.cost().missing()));
        return List.copyOf(missing);
    }

    public Money left() {
        return earned.minus(cost());
    }

    public boolean loses() {
        return left().isNegative();
    }
}
