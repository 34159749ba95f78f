package changeover.billing.invoices;

import changeover.billing.pricing.ClosedVisit.UsedPart;
import changeover.billing.pricing.Coverage;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What the rest of the house knows of a closed visit.
 *
 * @param nightMinutes of the minutes on site, those outside the working hours
 * @param agreementId in force at the home on that day, if any
 */
record VisitFacts(
        UUID payerId,
        String language,
        @Nullable String purchaseOrder,
        @Nullable UUID agreementId,
        Coverage coverage,
        int nightMinutes,
        List<UsedPart> parts) {}
