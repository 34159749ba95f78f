package changeover.contracts.tenants;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Time is an input: the one clock of the house, and in a rehearsal a clock whose day is set. */
@ApplicationScoped
public class Clocks {

    @Produces
    @ApplicationScoped
    SettableClock clock(@ConfigProperty(name = "changeover.rehearsal-day") Optional<LocalDate> rehearsal) {
        var clock = new SettableClock(Clock.systemUTC());
        rehearsal.ifPresent(clock::setDay);
        return clock;
    }
}
