package changeover.web.field;

import changeover.contracts.catalogue.FindingLevel;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.StopLists;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Typed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What was just said not to be used has its own list to go through first. */
@ApplicationScoped
class JustStopped {

    @Inject
    StopLists stops;

    /** The newest stop of the visit, where the form that was sent says that something must not be used. */
    Optional<UUID> by(Typed typed, VisitLists.Row row) {
        if (!FindingLevel.DO_NOT_USE.code().equals(typed.line("level", 40))) {
            return Optional.empty();
        }
        return stops.openIn(List.of(row.homeId())).getOrDefault(row.homeId(), List.of()).stream()
                .filter(stop -> row.id().equals(stop.visitId()))
                .reduce((_, last) -> last)
                .map(MachineStop::id);
    }
}
