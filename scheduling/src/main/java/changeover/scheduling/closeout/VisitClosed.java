package changeover.scheduling.closeout;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A visit has been closed: what billing, the papers and the year need to know of it.
 *
 * @param visitKind plan, call, return or extra
 * @param answersId the earlier visit that a return visit answers, else null
 * @param day the business's day on which it was closed
 * @param minutesOnSite whole minutes at the home
 * @param minutesPlanned whole minutes that the visit's tasks were given
 * @param extraMinutes of the minutes on site, those for work beyond the visit's tasks, as the technician said
 */
public record VisitClosed(
        UUID visitId,
        UUID homeId,
        @Nullable UUID agreementId,
        String visitKind,
        @Nullable UUID answersId,
        UUID technicianId,
        LocalDate day,
        int minutesOnSite,
        int minutesPlanned,
        int extraMinutes,
        List<Part> partsUsed,
        List<UUID> findings) {

    public VisitClosed {
        partsUsed = List.copyOf(partsUsed);
        findings = List.copyOf(findings);
    }

    /**
     * A part that stayed at the home.
     *
     * @param why plan (its task asked for it), repair, extra or warranty
     */
    public record Part(
            UUID operationId,
            String partCode,
            BigDecimal quantity,
            @Nullable UUID equipmentId,
            String why) {}
}
