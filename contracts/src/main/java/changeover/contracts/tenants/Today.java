package changeover.contracts.tenants;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;

/** The day and the hour on the current business's wall. */
@ApplicationScoped
public class Today {

    @Inject
    Clock clock;

    @Inject
    Businesses businesses;

    public LocalDate day() {
        return LocalDate.now(clock.withZone(businesses.current().zone()));
    }

    /** This moment, whatever the wall says. */
    public Instant now() {
        return clock.instant();
    }

    public LocalDateTime time() {
        return LocalDateTime.now(clock.withZone(businesses.current().zone()));
    }
}
