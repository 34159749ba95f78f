package changeover.contracts.agreements;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Who;
import changeover.contracts.money.Money;
import changeover.contracts.plans.PlanFacts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What is offered to one home: a plan's facts as they stand today, resolved for the machines of the home.
 *
 * @param price of the term for this home, before tax
 * @param validUntil last day on which a yes counts
 * @param renewsId the agreement whose next term this is; null for a first one
 */
public record Offer(
        UUID homeId,
        UUID signerId,
        UUID payerId,
        UUID planId,
        PlanFacts plan,
        Term term,
        Money price,
        String language,
        LocalDate offeredOn,
        LocalDate validUntil,
        @Nullable UUID renewsId,
        List<UUID> units,
        List<Promised> promises,
        List<Part> parts) {

    public Offer {
        units = List.copyOf(units);
        promises = List.copyOf(promises);
        parts = List.copyOf(parts);
    }

    /**
     * One task promised for one machine.
     *
     * @param equipmentId null for the home as a whole
     * @param cadence how often it is promised, wherever that comes from
     * @param minutes planning figure
     * @param basis common practice, or the label, law or agency that the cadence comes from
     */
    public record Promised(
            @Nullable UUID equipmentId, String taskCode, Cadence cadence, Who who, int minutes, String basis) {}

    public record Part(String partKind, BigDecimal quantity) {}
}
