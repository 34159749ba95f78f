package changeover.billing.costs;

import changeover.billing.pricing.Cause;
import changeover.billing.pricing.PlanCost;
import changeover.contracts.money.Money;
import java.util.List;
import java.util.Map;

/**
 * What one agreement earned and what its visits cost.
 *
 * @param missing costs that nobody wrote down: then it cost more than this
 * @param visits trips to the home among them, those for nothing too
 */
public record DealResult(
        Deal deal, Money earned, Map<Cause, Money> causes, Money cost, List<PlanCost.Missing> missing, int visits) {

    public DealResult {
        causes = Map.copyOf(causes);
        missing = List.copyOf(missing);
    }

    public Money left() {
        return earned.minus(cost);
    }

    public boolean loses() {
        return left().isNegative();
    }
}
