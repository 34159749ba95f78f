package changeover.web.portal;

import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomePart;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A customer sees the homes in which they have a part today, each from the first day of that part on. */
@ApplicationScoped
public class TheirHomes {

    @Inject
    HomeParts parts;

    @Inject
    Homes homes;

    List<Home> of(UUID customer, LocalDate day) {
        List<UUID> ids = parts.homesOf(customer, day);
        return ids.isEmpty() ? List.of() : homes.all(ids);
    }

    /** Since when the home is theirs to see; empty when they have no part in it on this day. */
    Optional<LocalDate> since(UUID home, UUID customer, LocalDate day) {
        return parts.on(home, day).stream()
                .filter(part -> part.customerId().equals(customer))
                .map(HomePart::from)
                .min(LocalDate::compareTo);
    }
}
