package changeover.billing.notices;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.Set;

/** Messages that ask for a yes or a no end with the address of the customer's own page. */
@ApplicationScoped
class AnsweredOnThePage {

    static final String ESTIMATE = "estimate";
    static final String MORE = "estimate-more";

    private static final Set<String> KINDS = Set.of(ESTIMATE, MORE);

    @Inject
    Instance<OwnPage> pages;

    /** What the message says as it leaves. */
    String body(MailTurns.Turn turn) {
        if (!KINDS.contains(turn.kind()) || turn.customerId() == null || !pages.isResolvable()) {
            return turn.body();
        }
        return pages.get()
                .openedFor(turn.customerId())
                .map(address -> turn.body() + "\n"
                        + MailWords.say(turn.language(), "own-page", Map.of("address", address)) + "\n")
                .orElse(turn.body());
    }
}
