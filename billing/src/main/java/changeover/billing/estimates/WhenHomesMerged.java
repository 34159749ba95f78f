package changeover.billing.estimates;

import changeover.contracts.merging.HomesMerged;
import changeover.contracts.merging.MergeUndone;
import changeover.contracts.merging.Moves;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** An estimate that may still become work comes to the home that lives on; what it says stays as it was offered. */
@ApplicationScoped
class WhenHomesMerged {

    private static final String TABLE = "estimate";

    /** It was neither refused nor taken back, and its work is not all done. */
    private static final String OPEN = "not exists (select from estimate_answer a where a.tenant_id = t.tenant_id"
            + " and a.estimate_id = t.id and a.how <> 'accepted' and a.undone_at is null)"
            + " and (not exists (select from estimate_work w where w.tenant_id = t.tenant_id and w.estimate_id = t.id)"
            + " or exists (select from estimate_work w where w.tenant_id = t.tenant_id and w.estimate_id = t.id"
            + " and not exists (select from visit_ending e where e.tenant_id = w.tenant_id and e.visit_id = w.visit_id)))";

    @Inject
    Moves moves;

    void comeAlong(@Observes HomesMerged event) {
        moves.along(event.mergeId(), event.homeId(), event.otherId(), TABLE, OPEN);
    }

    /** After the visits and the calls, since what was written from them goes back with them. */
    void goBack(@Observes @Priority(3000) MergeUndone event) {
        moves.back(event.mergeId(), event.homeId(), event.otherId(), TABLE);
        for (String from : new String[] {"visit", "call"}) {
            moves.backWith(event.homeId(), event.otherId(), TABLE, from + "_id", from, "true");
        }
    }
}
