package changeover.billing.invoices;

import changeover.billing.pricing.ClosedVisit.UsedPart;
import changeover.billing.pricing.Coverage;
import changeover.billing.pricing.OutsideHours;
import changeover.billing.pricing.ZoneOfHome;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What the rest of the house knows of a closed visit.
 *
 * @param work who was there and what they did of its tasks
 * @param outside of the minutes on site, those outside the working hours
 * @param zone where the home lies; null while the business has no zones
 * @param agreementId in force at the home on that day, if any
 */
record VisitFacts(
        UUID payerId,
        String language,
        @Nullable String purchaseOrder,
        @Nullable UUID agreementId,
        Coverage coverage,
        WorkDone work,
        OutsideHours outside,
        @Nullable ZoneOfHome zone,
        List<UsedPart> parts) {}
