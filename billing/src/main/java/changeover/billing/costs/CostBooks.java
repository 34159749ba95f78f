package changeover.billing.costs;

import changeover.billing.pricing.Prices;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.scheduling.dayplan.TravelAtHand;
import changeover.scheduling.stock.Parts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import org.jspecify.annotations.Nullable;

/** Reads what costs are reckoned from. */
@ApplicationScoped
public class CostBooks {

    @Inject
    Prices prices;

    @Inject
    RunningCosts running;

    @Inject
    Parts parts;

    @Inject
    Businesses businesses;

    @Inject
    TravelAtHand roads;

    private CostBook.@Nullable Spot shop() {
        BusinessProfile profile = businesses.profile();
        return CostBook.Spot.of(
                profile.latitude().orElse(null), profile.longitude().orElse(null));
    }

    public CostBook read() {
        return new CostBook(
                prices.book(), running.all(), parts.all(), businesses.current().currency(), shop(), roads.travel());
    }
}
