package changeover.contracts.calendar;

import changeover.contracts.tenants.BusinessOpened;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** A new business begins with the seasons of a cold climate and the warm months of its place, and moves them as it needs. */
@ApplicationScoped
class WhenBusinessOpened {

    @Inject
    Seasons seasons;

    void open(@Observes BusinessOpened opened) {
        seasons.begin(Climate.at(opened.country() + "-" + opened.region(), opened.day()));
    }
}
