package changeover.billing.pricing;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a closed visit used up.
 *
 * @param promisedMinutes spent on what the plan promised; nought where there is no plan
 * @param extraMinutes spent on anything else
 * @param people who were there, all as long: every figure of minutes is that of each of them
 * @param otherMinutes of the extra ones, those for something else than what the visit was made for
 * @param outside of all these, those outside the business's working hours
 * @param zone where the home lies; null while the business has no zones
 */
public record ClosedVisit(
        LocalDate day,
        VisitKind kind,
        int people,
        int promisedMinutes,
        int extraMinutes,
        int otherMinutes,
        OutsideHours outside,
        List<UsedPart> parts,
        @Nullable ZoneOfHome zone) {

    /** One was there, and did nothing else than what the visit was made for. */
    public ClosedVisit(
            LocalDate day,
            VisitKind kind,
            int promisedMinutes,
            int extraMinutes,
            OutsideHours outside,
            List<UsedPart> parts,
            @Nullable ZoneOfHome zone) {
        this(day, kind, 1, promisedMinutes, extraMinutes, 0, outside, parts, zone);
    }

    /** The minutes of all who were there together. */
    ClosedVisit together() {
        return new ClosedVisit(
                day,
                kind,
                people,
                people * promisedMinutes,
                people * extraMinutes,
                people * otherMinutes,
                outside.times(people),
                parts,
                zone);
    }

    /**
     * @param kind what of a machine it fits (filter, pad…), as the plan's included parts name it
     * @param unit UN/ECE Recommendation 20
     * @param warranty who answers for it before the plan and the price are asked
     */
    public record UsedPart(
            String code, String kind, Wording name, BigDecimal quantity, String unit, Warranty warranty) {

        /** @param warranty the maker replaces it, as whoever was there said */
        public UsedPart(String code, String kind, Wording name, BigDecimal quantity, String unit, boolean warranty) {
            this(code, kind, name, quantity, unit, warranty ? Warranty.SAID : Warranty.NONE);
        }
    }
}
