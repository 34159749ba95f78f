package changeover.billing.reminders;

import changeover.contracts.calendar.DayPassed;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/**
 * Where the business lets reminders go by themselves, the day writes those that are due. Days that are made up for after a
 * standstill write nothing: only today's standing counts.
 */
@ApplicationScoped
class WhenDayPassed {

    @Inject
    Ladders ladders;

    @Inject
    Reminders reminders;

    @Inject
    Today today;

    void remind(@Observes DayPassed passed) {
        if (!passed.day().isBefore(today.day()) && ladders.how() == Ladders.How.DAILY) {
            reminders.write();
        }
    }
}
