package changeover.scheduling.partners;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A partner's paper holds until its last day, and is spoken of so many days before it.
 *
 * @param kind licence, insurance or other
 * @param remindDays how many days before its last day somebody is told
 */
public record PartnerPaper(
        UUID id,
        UUID partner,
        String partnerName,
        String kind,
        @Nullable String number,
        LocalDate expiresOn,
        int remindDays) {

    public static final String LICENCE = "licence";

    public static final List<String> KINDS = List.of(LICENCE, "insurance", "other");

    /** Whether it holds no more. */
    public boolean isOver(LocalDate day) {
        return expiresOn.isBefore(day);
    }

    /** Whether somebody must see to it: it is over, or will be soon. */
    public boolean isSpokenOf(LocalDate day) {
        return !day.isBefore(expiresOn.minusDays(remindDays));
    }
}
