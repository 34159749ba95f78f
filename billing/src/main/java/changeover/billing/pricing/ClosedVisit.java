package changeover.billing.pricing;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/**
 * What a closed visit used up.
 *
 * @param promisedMinutes spent on what the plan promised; nought where there is no plan
 * @param extraMinutes spent on anything else
 * @param nightMinutes of all these, those outside the business's working hours
 */
public record ClosedVisit(
        LocalDate day, VisitKind kind, int promisedMinutes, int extraMinutes, int nightMinutes, List<UsedPart> parts) {

    /**
     * @param kind what of a machine it fits (filter, pad…), as the plan's included parts name it
     * @param unit UN/ECE Recommendation 20
     * @param warranty the maker replaces it: nobody pays
     */
    public record UsedPart(
            String code, String kind, Wording name, BigDecimal quantity, String unit, boolean warranty) {}
}
