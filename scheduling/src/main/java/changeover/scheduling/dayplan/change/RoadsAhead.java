package changeover.scheduling.dayplan.change;

import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.routes.Travel;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;

/** The places between which the coming week's days will be driven. */
@ApplicationScoped
public class RoadsAhead {

    private static final int DAYS = 7;

    /** So many at most: a table of roads grows with their square. */
    private static final int MOST = 300;

    @Inject
    DaysHeld held;

    @Inject
    Today today;

    public List<Travel.Place> places() {
        return today.day()
                .datesUntil(today.day().plusDays(DAYS))
                .flatMap(day -> held.places(day).stream())
                .distinct()
                .limit(MOST)
                .toList();
    }
}
