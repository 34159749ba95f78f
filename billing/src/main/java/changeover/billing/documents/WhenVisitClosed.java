package changeover.billing.documents;

import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;

/** Every closed visit wants its report, and every amendment the next version of it. */
@ApplicationScoped
class WhenVisitClosed {

    @Inject
    Documents documents;

    void order(@Observes VisitClosed closed) {
        documents.order(List.of(Wanted.of(PaperKind.REPORT, closed.visitId())));
    }

    void orderAgain(@Observes VisitAmended amended) {
        documents.order(List.of(new Wanted(PaperKind.REPORT, amended.now().visitId(), amended.version())));
    }
}
