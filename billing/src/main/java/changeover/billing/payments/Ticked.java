package changeover.billing.payments;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * What a person ticked is paid as it is open when its customer's turn comes: of two who ticked the same document, the second
 * is told that it is no longer open.
 */
@ApplicationScoped
public class Ticked {

    @Inject
    EntityManager session;

    @Inject
    Owed owed;

    @Inject
    DraftsToPay drafts;

    @Inject
    Today today;

    /**
     * Holds the customer's turn until the transaction ends. Money may have come before the document that it is meant for, so
     * what is open is that of today.
     *
     * @throws changeover.contracts.words.Refused when something that was ticked is not open
     */
    public List<NewPayment.Part> parts(UUID customer, Collection<String> chosen) {
        if (chosen.isEmpty()) {
            return List.of();
        }
        CustomersTurn.wait(session, customer);
        LocalDate day = today.day();
        Stream<NewPayment.Part> issued =
                owed.open(customer, day).stream().map(item -> new NewPayment.Part(item.invoiceId(), item.open()));
        Stream<NewPayment.Part> drafted =
                drafts.of(customer, day).stream().map(draft -> new NewPayment.Part(draft.id(), draft.left()));
        List<NewPayment.Part> parts = Stream.concat(issued, drafted)
                .filter(part -> chosen.contains(part.invoiceId().toString()))
                .toList();
        if (parts.size() < Set.copyOf(chosen).size()) {
            throw Refusal.of("payment.no-longer-open").thrown();
        }
        return parts;
    }
}
