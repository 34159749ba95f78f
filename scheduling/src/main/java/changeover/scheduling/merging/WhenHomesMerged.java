package changeover.scheduling.merging;

import changeover.contracts.merging.HomesMerged;
import changeover.contracts.merging.MergeUndone;
import changeover.contracts.merging.Moves;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;

/**
 * Visits that nobody began come to the home that lives on, with what is promised there, the history of its machines and those
 * that must not be used.
 */
@ApplicationScoped
class WhenHomesMerged {

    private static final String ITS_AGREEMENT = "exists (select from agreement a where a.tenant_id = t.tenant_id"
            + " and a.id = t.agreement_id and a.home_id = :home)";

    /** The visit of a call stays with its call, which nobody may change. */
    private static final String NOT_BEGUN = "t.kind <> 'call' and (t.agreement_id is null or " + ITS_AGREEMENT + ")"
            + " and not exists (select from visit_ending e where e.tenant_id = t.tenant_id and e.visit_id = t.id)"
            + " and not exists (select from operation o where o.tenant_id = t.tenant_id and o.visit_id = t.id)";

    private static final String ITS_MACHINE = "exists (select from equipment q where q.tenant_id = t.tenant_id"
            + " and q.id = t.equipment_id and q.home_id = :home)";

    private static final String STILL_STOPPED =
            "not exists (select from back_in_service b" + " where b.tenant_id = t.tenant_id and b.stop_id = t.id)";

    private static final List<String> GOING_BACK = List.of(
            "visit",
            "household_task",
            "unkept_promise",
            "unit_history",
            "last_time_unread",
            "follow_up",
            "machine_stop");

    @Inject
    Moves moves;

    void comeAlong(@Observes HomesMerged event) {
        along(event, "visit", NOT_BEGUN);
        along(event, "household_task", ITS_AGREEMENT);
        along(event, "unkept_promise", ITS_AGREEMENT);
        along(event, "unit_history", ITS_MACHINE);
        along(event, "last_time_unread", ITS_MACHINE);
        along(event, "follow_up", "t.ended_on is null");
        along(event, "machine_stop", STILL_STOPPED);
    }

    private void along(HomesMerged event, String table, String which) {
        moves.along(event.mergeId(), event.homeId(), event.otherId(), table, which);
    }

    void goBack(@Observes MergeUndone event) {
        for (String table : GOING_BACK) {
            moves.back(event.mergeId(), event.homeId(), event.otherId(), table);
        }
        for (String table : new String[] {"visit", "household_task", "unkept_promise"}) {
            moves.backWithAgreements(event.mergeId(), event.homeId(), event.otherId(), table);
        }
    }
}
