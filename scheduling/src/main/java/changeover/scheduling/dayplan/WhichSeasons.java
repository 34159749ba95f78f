package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Seasons;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;

/** With which season the current business plans a visit, as its seasons stand today. */
@ApplicationScoped
public class WhichSeasons {

    @Inject
    Seasons seasons;

    @Inject
    Today today;

    public WhichSeason today() {
        return new WhichSeason(seasons.climate().seasons(), today.day().plusDays(1));
    }
}
