package changeover.billing.invoices;

import changeover.scheduling.closeout.VisitClosed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What work to come would be charged: by the rules, the agreement and the prices of a visit closed on that day. */
@ApplicationScoped
public class ForeseenWork {

    private static final UUID NONE = new UUID(0, 0);

    @Inject
    VisitDrafts visits;

    /** So much of a part. */
    public record Part(String code, BigDecimal quantity) {}

    /** Empty when the home has nobody who could be asked to pay. */
    public Optional<Draft> of(UUID home, LocalDate day, int minutes, List<Part> parts) {
        List<VisitClosed.Part> used = parts.stream()
                .map(part -> new VisitClosed.Part(NONE, part.code(), part.quantity(), null, "repair"))
                .toList();
        return visits.of(
                new VisitClosed(NONE, home, null, "extra", null, NONE, day, minutes, minutes, minutes, used, List.of()),
                1);
    }
}
