package changeover.billing.pricing;

import changeover.contracts.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What the business's own work costs it on a day; whatever nobody wrote down is null.
 *
 * @param hour of a technician, with everything that is paid for it
 * @param setUpMinutes at each visit, beyond its tasks
 */
public record CostRates(
        @Nullable Money hour,
        @Nullable Integer setUpMinutes,
        Trip trip,
        @Nullable Overhead overhead) {

    /** For minutes on site that hold their set-up already. */
    public CostRates onSite() {
        return new CostRates(hour, 0, trip, overhead);
    }
}
