package changeover.billing.pricing;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a part that was used, and of the machine it went into.
 *
 * @param why plan, repair, extra or warranty, as whoever was there said
 * @param makerUntil the last day of the maker's warranty on the machine; null where nobody wrote one down
 * @param registration of the machine with its maker, where it has one
 * @param fitted the last time that we put the same part into the same machine
 * @param law what the law gives for the machine; null where no row of its place holds
 */
public record WarrantyFacts(
        String why,
        @Nullable LocalDate makerUntil,
        @Nullable String registration,
        @Nullable Fitted fitted,
        @Nullable Law law) {

    /**
     * @param makersMonths how long the part's maker answers from that day; nought for no time
     * @param ourMonths how long we answer for that work
     */
    public record Fitted(LocalDate day, int makersMonths, int ourMonths) {}

    /** @param installed the day from which the months count */
    public record Law(LocalDate installed, int months, String source) {}
}
