package changeover.web.session;

import changeover.contracts.calendar.DayPassed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** With each day that passes the forms of long ago are forgotten. */
@ApplicationScoped
class WhenDayPassed {

    @Inject
    SentForms forms;

    void forget(@Observes DayPassed passed) {
        forms.forgetOld();
    }
}
