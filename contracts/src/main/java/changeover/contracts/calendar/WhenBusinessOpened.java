package changeover.contracts.calendar;

import changeover.contracts.tenants.BusinessOpened;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** A new business begins with the seasons of a cold climate, and moves them as its own climate asks. */
@ApplicationScoped
class WhenBusinessOpened {

    @Inject
    Seasons seasons;

    void open(@Observes BusinessOpened opened) {
        seasons.begin(Climate.cold());
    }
}
