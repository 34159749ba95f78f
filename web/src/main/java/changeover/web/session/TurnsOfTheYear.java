package changeover.web.session;

import changeover.billing.documents.band.Turn;
import changeover.contracts.calendar.Climate;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;

/** Both turns of a calendar year, by the business's own seasons, for the strip under the header. */
@ApplicationScoped
class TurnsOfTheYear {

    List<Turn> of(int year) {
        return Turn.of(Climate.cold().seasons(), LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
    }
}
