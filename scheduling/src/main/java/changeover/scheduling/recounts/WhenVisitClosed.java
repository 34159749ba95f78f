package changeover.scheduling.recounts;

import changeover.scheduling.closeout.TasksUndone;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import changeover.scheduling.visits.YearsRecounted;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** What was done early or late moves what comes after it. */
@ApplicationScoped
class WhenVisitClosed {

    @Inject
    YearsRecounted years;

    void count(@Observes VisitClosed closed) {
        years.follow(closed.visitId());
    }

    void goBack(@Observes TasksUndone undone) {
        years.goBack(undone.visitId(), undone.tasks());
    }

    void countAgain(@Observes VisitAmended amended) {
        years.follow(amended.now().visitId());
    }
}
