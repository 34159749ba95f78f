package changeover.web.walls;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** What stands behind a member of a document or a word of a query, by its name: a row of a business. */
@ApplicationScoped
class Named {

    /** Ids that a sender makes for itself; they name nothing of anybody's. */
    static final Set<String> MADE_BY_THE_SENDER = Set.of("id", "basedOn");

    private static final Map<String, String> ROWS = Map.ofEntries(
            Map.entry("home", "home.id"),
            Map.entry("other", "home.id"),
            Map.entry("customer", "customer.id"),
            Map.entry("plan", "plan.id"),
            Map.entry("agreement", "agreement.id"),
            Map.entry("visit", "visit.id"),
            Map.entry("task", "visit_task.id"),
            Map.entry("technician", "membership.person_id"),
            Map.entry("person", "membership.person_id"),
            Map.entry("invoice", "invoice.id"),
            Map.entry("call", "call.id"),
            Map.entry("equipment", "equipment.id"),
            Map.entry("unit", "equipment.id"),
            Map.entry("building", "building.id"),
            Map.entry("finding", "finding.id"),
            Map.entry("followUp", "follow_up.id"),
            Map.entry("partner", "partner.id"),
            Map.entry("place", "stock_place.id"),
            Map.entry("from", "stock_place.id"),
            Map.entry("to", "stock_place.id"),
            Map.entry("at", "stock_place.id"));

    @Inject
    OwnersEyes eyes;

    /** An id of that business behind the name; empty when nobody has said what the name stands for. */
    Optional<String> of(String name, UUID tenant) {
        String column = ROWS.get(name);
        List<String> values = column == null ? List.of() : eyes.values(column, tenant);
        return values.isEmpty() ? Optional.empty() : Optional.of(values.getFirst());
    }
}
