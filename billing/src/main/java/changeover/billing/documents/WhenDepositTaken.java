package changeover.billing.documents;

import changeover.billing.payments.DepositTaken;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;

/** Every deposit wants its receipt. */
@ApplicationScoped
class WhenDepositTaken {

    @Inject
    Documents documents;

    void order(@Observes DepositTaken taken) {
        documents.order(List.of(Wanted.of(PaperKind.RECEIPT, taken.depositId())));
    }
}
