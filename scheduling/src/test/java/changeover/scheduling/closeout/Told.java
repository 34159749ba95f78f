package changeover.scheduling.closeout;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;

/** Hears what close-out tells, for the tests. */
@ApplicationScoped
public class Told {

    private final List<VisitClosed> closed = new CopyOnWriteArrayList<>();
    private final List<VisitAmended> amended = new CopyOnWriteArrayList<>();

    void hear(@Observes VisitClosed event) {
        closed.add(event);
    }

    void hear(@Observes VisitAmended event) {
        amended.add(event);
    }

    List<VisitClosed> closed(UUID visit) {
        return closed.stream().filter(event -> event.visitId().equals(visit)).toList();
    }

    VisitAmended amended(UUID visit) {
        return amended.stream()
                .filter(event -> event.now().visitId().equals(visit))
                .reduce((_, last) -> last)
                .orElseThrow();
    }
}
