package changeover.scheduling.partners;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A visit is with a partner: which day they go, what they ask of us, and whether they have done it.
 *
 * @param day the day they go, or went
 * @param price what the partner asks of us, before taxes
 * @param done whether it was closed as done by them
 * @param report whether their report is kept
 */
public record GivenVisit(
        UUID id,
        UUID visit,
        String home,
        UUID partner,
        String partnerName,
        String trade,
        @Nullable String phone,
        LocalDate day,
        Money price,
        @Nullable String note,
        boolean done,
        boolean report) {

    /** The ticket that the partner's licence stands for. */
    public Optional<String> ticket() {
        return Partner.ticketOf(trade);
    }

    /** Whether they should have been there and nobody has said that they were. */
    public boolean isLate(LocalDate today) {
        return !done && day.isBefore(today);
    }
}
