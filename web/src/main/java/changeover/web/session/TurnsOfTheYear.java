package changeover.web.session;

import changeover.billing.documents.band.Turn;
import changeover.contracts.calendar.Seasons;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;

/** Both turns of a calendar year, by the business's own seasons, for the strip under the header. */
@ApplicationScoped
class TurnsOfTheYear {

    @Inject
    Seasons seasons;

    List<Turn> of(int year) {
        return Turn.of(seasons.climate().seasons(), LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
    }
}
