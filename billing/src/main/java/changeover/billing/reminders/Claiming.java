package changeover.billing.reminders;

import changeover.billing.payments.FreeCredits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Collection;
import java.util.UUID;

/** What holds and kept money leave to be asked for on a day. */
@ApplicationScoped
public class Claiming {

    @Inject
    Holds holds;

    @Inject
    FreeCredits credits;

    /** From everybody. */
    public Claims on(LocalDate day) {
        return new Claims(holds.standing(day), credits.all(day));
    }

    /** From a few: nobody else's money is read. */
    public Claims of(Collection<UUID> customers, LocalDate day) {
        return new Claims(holds.standing(day), credits.of(customers, day));
    }
}
