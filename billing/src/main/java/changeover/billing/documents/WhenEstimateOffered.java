package changeover.billing.documents;

import changeover.billing.estimates.EstimateOffered;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;

/** Every offered estimate wants its paper. */
@ApplicationScoped
class WhenEstimateOffered {

    @Inject
    Documents documents;

    void order(@Observes EstimateOffered offered) {
        documents.order(List.of(Wanted.of(PaperKind.ESTIMATE, offered.estimateId())));
    }
}
