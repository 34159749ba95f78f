package changeover.scheduling.merging;

import changeover.contracts.merging.HomesMerged;
import changeover.contracts.merging.MergeUndone;
import changeover.contracts.merging.Moves;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;

/**
 * Visits that nobody began come to the home that lives on, with the calls that became them or still wait, the parts that are on
 * order, what is promised there, the history of its machines and those that must not be used.
 */
@ApplicationScoped
class WhenHomesMerged {

    private static final String ITS_AGREEMENT = "exists (select from agreement a where a.tenant_id = t.tenant_id"
            + " and a.id = t.agreement_id and a.home_id = :home)";

    private static final String NOT_BEGUN =
            "not exists (select from visit_ending e where e.tenant_id = t.tenant_id and e.visit_id = t.id)"
                    + " and not exists (select from operation o where o.tenant_id = t.tenant_id and o.visit_id = t.id)";

    private static final String ITS_MACHINE = "exists (select from equipment q where q.tenant_id = t.tenant_id"
            + " and q.id = t.equipment_id and q.home_id = :home)";

    private static final String STILL_STOPPED =
            "not exists (select from back_in_service b" + " where b.tenant_id = t.tenant_id and b.stop_id = t.id)";

    /** Nobody answered it yet, or the visit that it became came along. */
    private static final String CALL_WAITS = "not exists (select from call_outcome o where o.tenant_id = t.tenant_id"
            + " and o.call_id = t.id and (o.visit_id is null or not exists (select from visit v"
            + " where v.tenant_id = o.tenant_id and v.id = o.visit_id and v.home_id = :home)))";

    /** It was not given up, and no visit with it was kept. */
    private static final String NOT_USED = "not exists (select from part_order_ending e"
            + " where e.tenant_id = t.tenant_id and e.order_id = t.id)"
            + " and not exists (select from part_second_visit s"
            + " join visit_ending e on e.tenant_id = s.tenant_id and e.visit_id = s.visit_id and e.how = 'closed'"
            + " where s.tenant_id = t.tenant_id and s.order_id = t.id)";

    private static final List<String> GOING_BACK = List.of(
            "visit",
            "call",
            "part_order",
            "household_task",
            "unkept_promise",
            "unit_history",
            "last_time_unread",
            "follow_up",
            "machine_stop");

    @Inject
    Moves moves;

    void comeAlong(@Observes HomesMerged event) {
        along(event, "visit", "(t.agreement_id is null or " + ITS_AGREEMENT + ") and " + NOT_BEGUN);
        along(event, "call", CALL_WAITS);
        along(event, "part_order", NOT_USED);
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

    /** What came along, and what was made since for something that goes back. */
    void goBack(@Observes MergeUndone event) {
        for (String table : GOING_BACK) {
            moves.back(event.mergeId(), event.homeId(), event.otherId(), table);
        }
        for (String table : new String[] {"visit", "household_task", "unkept_promise"}) {
            moves.backWithAgreements(event.mergeId(), event.homeId(), event.otherId(), table);
        }
        moves.backWith(event.homeId(), event.otherId(), "visit", "answers_id", "visit", NOT_BEGUN);
        moves.backWith(event.homeId(), event.otherId(), "part_order", "visit_id", "visit", "true");
    }
}
