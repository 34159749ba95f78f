package changeover.billing.openings;

import changeover.billing.periods.Periods;
import changeover.contracts.calendar.DayInWords;
import changeover.contracts.takeover.TakeOverMoved;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.Map;

/** What came out of the old books moves with the take-over, so neither day may be closed; what was prepaid has its day. */
@ApplicationScoped
class WhenTakeOverMoved {

    @Inject
    OpeningBalances openings;

    @Inject
    Prepaid prepaid;

    @Inject
    Periods periods;

    void check(@Observes TakeOverMoved event) {
        if (!prepaid.all().isEmpty()) {
            throw Refusal.of("opening.prepaid-has-its-day", Map.of("day", DayInWords.of(event.from())))
                    .at("takeOver")
                    .thrown();
        }
        if (!openings.all().isEmpty()) {
            periods.check(event.from(), "takeOver");
            periods.check(event.to(), "takeOver");
        }
    }
}
