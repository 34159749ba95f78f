package changeover.billing.payments;

import changeover.billing.fees.FeeDrafts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/** The bank sent a payment back: what it paid is open again, and the fee of the place is drafted, once. */
@ApplicationScoped
public class Returns {

    @Inject
    Payments payments;

    @Inject
    FeeDrafts fees;

    /**
     * @return the draft that asks for the fee; empty where the place has none
     * @throws changeover.contracts.words.Refused when it was undone before, or the day is closed
     */
    public Optional<UUID> back(UUID payment, LocalDate day, String why) {
        payments.undo(payment, Undoing.How.BOUNCED, day, why);
        return fees.returned(payment, day);
    }
}
