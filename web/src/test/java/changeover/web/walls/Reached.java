package changeover.web.walls;

import changeover.web.walls.ALivedInShop.Lived;
import changeover.web.walls.Routes.Route;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** What stands behind a parameter of a path: a row of a business, by the word in front of it. */
@ApplicationScoped
class Reached {

    /** Parameters that name no row of anybody: a day, a task of the shipped catalogue. */
    private static final Set<String> NO_ROW =
            Set.of("season/day", "days/day", "intervals/task", "lists/list", "slug/where");

    private static final Map<String, String> ROWS = Map.ofEntries(
            Map.entry("homes", "home.id"),
            Map.entry("customers", "customer.id"),
            Map.entry("buildings", "building.id"),
            Map.entry("machines", "equipment.id"),
            Map.entry("agreements", "agreement.id"),
            Map.entry("plans", "plan.id"),
            Map.entry("visits", "visit.id"),
            Map.entry("reports", "visit.id"),
            Map.entry("tasks", "visit_task.id"),
            Map.entry("household", "household_task.id"),
            Map.entry("looks", "filter_look.id"),
            Map.entry("rhythms", "equipment.id"),
            Map.entry("photos", "photo_bytes.sha256"),
            Map.entry("invoices", "invoice.id"),
            Map.entry("payments", "payment.id"),
            Map.entry("deposits", "deposit.id"),
            Map.entry("write-offs", "write_off.id"),
            Map.entry("runs", "billing_run.id"),
            Map.entry("periods", "period_close.id"),
            Map.entry("holds", "reminder_hold.id"),
            Map.entry("statements", "account_statement.id"),
            Map.entry("files/bank", "bank.id"),
            Map.entry("sheets", "old_sheet.id"),
            Map.entry("merges", "home_merge.id"),
            Map.entry("openings/opening", "opening_balance.id"),
            Map.entry("taken/file", "bank_file.id"),
            Map.entry("lines/line", "bank_line.id"),
            Map.entry("bank-lines", "bank_line.id"),
            Map.entry("billing-runs", "billing_run.id"),
            Map.entry("plan-runs", "season_run.id"),
            Map.entry("absence", "membership.person_id"),
            Map.entry("absences", "membership.person_id"),
            Map.entry("rings", "to_ring.id"),
            Map.entry("plans/run", "season_run.id"),
            Map.entry("mail", "outbox.id"),
            Map.entry("people/person", "membership.person_id"),
            Map.entry("people/id", "membership.person_id"),
            Map.entry("people/part", "home_part.id"),
            Map.entry("days/off", "day_off.id"),
            Map.entry("days-off/off", "day_off.id"),
            Map.entry("kinds/own", "own_kind.id"),
            Map.entry("tasks/own", "own_task.id"),
            Map.entry("codes", "access_code.id"),
            Map.entry("calls", "call.id"),
            Map.entry("estimates", "estimate.id"),
            Map.entry("questions", "estimate_asked_more.id"),
            Map.entry("orders", "part_order.id"),
            Map.entry("part-orders", "part_order.id"),
            Map.entry("claims/claim", "part_claim.id"),
            Map.entry("part-claims", "part_claim.id"),
            Map.entry("returns/back", "part_return.id"),
            Map.entry("part-returns", "part_return.id"),
            Map.entry("stopped", "machine_stop.id"),
            Map.entry("reviews/hold", "review_hold.id"),
            Map.entry("reviews/rule", "review_rule.id"),
            Map.entry("review-rules", "review_rule.id"),
            Map.entry("on-call", "on_call.id"),
            Map.entry("hazards", "hazard.id"),
            Map.entry("shut", "home_shut.id"),
            Map.entry("instruments", "instrument.id"),
            Map.entry("papers", "business_paper.id"),
            Map.entry("partners", "partner.id"),
            Map.entry("papers/held", "partner_paper.id"),
            Map.entry("keys", "access_code.id"),
            Map.entry("seasons", "season.id"),
            Map.entry("loading", "stock_place.id"),
            Map.entry("parts", "part.code"));

    /** What is found under its own visit only: the visit and the row as an address names them. */
    private static final Map<String, String> OF_A_VISIT = Map.of(
            "tasks/{task}", "select distinct visit_id || '/tasks/' || id from visit_task where tenant_id = ?",
            "estimates/{estimate}",
                    "select distinct visit_id || '/estimates/' || estimate_id from estimate_work where tenant_id = ?");

    @Inject
    OwnersEyes eyes;

    boolean isRow(Route route, String parameter) {
        return !NO_ROW.contains(route.before(parameter) + "/" + parameter)
                && !parameter.equals("where")
                && !NO_ROW.contains(parameter);
    }

    /** The value of a parameter for one business; empty when nobody has said what stands behind it. */
    Optional<String> of(Lived lived, Route route, String parameter) {
        String before = route.before(parameter);
        if (parameter.equals("secret")) {
            return Optional.of(before.equals("calendars") ? lived.calendar() : lived.secret());
        }
        if (before.equals("again")) {
            return Optional.of(lived.kept().toString());
        }
        if (parameter.equals("place")) {
            return Optional.of(lived.home().toString());
        }
        String column = ROWS.getOrDefault(before + "/" + parameter, ROWS.get(before));
        if (column == null) {
            return Optional.empty();
        }
        return all(lived, column).stream().reduce((_, last) -> last);
    }

    private List<String> all(Lived lived, String column) {
        return eyes.values(column, lived.shop().tenant()).stream()
                .filter(value -> !value.startsWith("pad-"))
                .toList();
    }

    /** The same address for each row that its last word may name. */
    List<String> paths(Lived lived, Route route) {
        for (String of : OF_A_VISIT.keySet()) {
            if (route.path().contains("/visits/{id}/" + of)) {
                return eyes.texts(OF_A_VISIT.get(of), lived.shop().tenant()).stream()
                        .map(pair -> path(
                                lived,
                                new Route(route.method(), route.path().replace("{id}/" + of, pair), route.takes())))
                        .toList();
            }
        }
        List<String> parameters = route.parameters();
        String last = parameters.isEmpty() ? "" : parameters.getLast();
        String column = ROWS.getOrDefault(route.before(last) + "/" + last, ROWS.getOrDefault(route.before(last), ""));
        if (last.isEmpty() || column.isEmpty() || of(lived, route, last).isEmpty()) {
            return List.of(path(lived, route));
        }
        return all(lived, column).stream()
                .map(value -> path(lived, route, last, value))
                .toList();
    }

    private String path(Lived lived, Route route, String last, String value) {
        return new Route(route.method(), route.path().replaceFirst("\\{" + last + "(:[^}]*)?}", value), "")
                .at(name -> path(lived, name, route));
    }

    /** The address of a page of a business, with its own rows in it. */
    String path(Lived lived, Route route) {
        return route.at(name -> path(lived, name, route));
    }

    private String path(Lived lived, String name, Route route) {
        return switch (name) {
            case "slug" -> lived.shop().slug();
            case "where" -> "homes";
            case "day" -> "2026-11-25";
            case "list" -> route.path().contains("/money/") ? "invoices" : "agreements";
            default -> of(lived, route, name).orElse("filter-check");
        };
    }

    /** What cannot be known: of the same shape, and nobody's. */
    String nobodys(String parameter) {
        return switch (parameter) {
            case "sha256" -> UUID.randomUUID().toString().replace("-", "").repeat(2);
            case "secret" -> "A".repeat(43);
            case "code" -> "no-such-" + UUID.randomUUID().toString().substring(0, 8);
            default -> UUID.randomUUID().toString();
        };
    }
}
