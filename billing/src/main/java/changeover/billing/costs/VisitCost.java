package changeover.billing.costs;

import changeover.billing.pricing.Cause;
import changeover.billing.pricing.PlanCost;
import changeover.contracts.money.Money;

/** A visit that was made for an agreement, with what it cost cause by cause: an agreement's cost is the sum of its visits'. */
public record VisitCost(KeptVisit visit, PlanCost cost) {

    public Money of(Cause cause) {
        return cost.of(cause);
    }

    public Money total() {
        return cost.total();
    }
}
