package changeover.web.api;

import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.SecondHand;
import changeover.scheduling.dayplan.SecondHands;
import changeover.scheduling.dayplan.standing.HourStates;
import changeover.scheduling.dayplan.standing.Steps;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads a visit's hour for an answer, and from a request why it moves. */
@ApplicationScoped
class HourDocuments {

    private static final int MOST = 500;

    @Inject
    Appointments appointments;

    @Inject
    SecondHands seconds;

    @Inject
    HourStates states;

    @Inject
    Steps steps;

    HourDocument of(UUID visit) {
        return HourDocument.of(
                visit,
                states.of(visit),
                appointments.of(visit),
                seconds.of(visit).map(SecondHand::technicianId).orElse(null),
                steps.of(visit));
    }

    /** {@code askedBy} (customer or us) and {@code why}, both or none. */
    static @Nullable Moving moving(Asked asked) {
        boolean said = asked.value("askedBy") != null || asked.value("why") != null;
        if (!said) {
            return null;
        }
        String by = asked.oneOf("askedBy", Set.of("customer", "us"));
        String why = asked.text("why", MOST);
        return why.isEmpty() || by.isEmpty() ? null : new Moving(Moving.By.ofCode(by), why);
    }
}
