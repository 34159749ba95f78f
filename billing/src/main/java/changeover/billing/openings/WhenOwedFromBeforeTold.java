package changeover.billing.openings;

import changeover.contracts.takeover.OwedFromBeforeTold;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** What an old list says is still owed stands in the balances from its day on. */
@ApplicationScoped
class WhenOwedFromBeforeTold {

    @Inject
    OpeningBalances openings;

    void keep(@Observes OwedFromBeforeTold event) {
        openings.add(event.debts().stream()
                .map(debt -> new OpeningBalances.Opening(debt.customerId(), debt.since(), debt.amount(), debt.words()))
                .toList());
    }
}
