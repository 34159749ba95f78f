package changeover.billing.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.pricing.MarkUp.Scope;
import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class MarkUpTest {

    static final MarkUps RULES = new MarkUps(List.of(
            byCost("0.00", "100", "0.05", "2026-01-01"),
            byCost("20.00", "60", "0.05", "2026-01-01"),
            byCost("200.00", "35", "1.00", "2026-01-01"),
            byCost("0.00", "120", "0.01", "2027-01-01"),
            rule(Scope.KIND, "filter", "150", "0.25", "2026-01-01"),
            rule(Scope.KIND, "filter", "160", "0.25", "2026-09-01"),
            rule(Scope.PART, "filter-20x25x4", "90", "0.05", "2026-03-01"),
            rule(Scope.PART, "filter-20x25x4", null, "0.05", "2026-10-01")));

    /** Every answer was reckoned by hand: cost times one and the percent, to the nearest step, the half of one up. */
    @Test
    void a_price_is_the_cost_and_its_mark_up_rounded_half_up_to_the_step() {
        price("4.20", "110", "0.05", "8.80"); // 8.82
        price("4.25", "110", "0.05", "8.95"); // 8.925, half of a step
        price("4.24", "110", "0.05", "8.90"); // 8.904
        price("9.99", "35", "0.05", "13.50"); // 13.4865
        price("9.99", "35", "0.01", "13.49"); // 13.4865
        price("0.01", "50", "0.01", "0.02"); // 0.015, half of a cent
        price("10.00", "12.5", "0.25", "11.25");
        price("11.00", "12.5", "0.25", "12.50"); // 12.375, half of a step
        price("117.30", "40", "1.00", "164.00"); // 164.22
        price("117.50", "40", "1.00", "165.00"); // 164.50, half of a step
        price("100.00", "33.33", "0.03", "133.32"); // 133.33 is 4444.33 steps
        price("0.00", "80", "0.05", "0.00");
        price("19.95", "0", "0.05", "19.95");
    }

    private static void price(String cost, String percent, String step, String expected) {
        MarkUp rule = rule(Scope.KIND, "any", percent, step, "2026-01-01");
        assertEquals(expected, rule.price(cad(cost), new BigDecimal(percent)).decimal(), cost + " +" + percent + " %");
    }

    @Test
    void a_parts_own_rule_goes_before_its_kinds_and_that_before_the_one_by_cost() {
        check("filter-20x25x4", "filter", "17.10", "2026-02-28", "filter 150");
        check("filter-20x25x4", "filter", "17.10", "2026-03-01", "filter-20x25x4 90");
        check("filter-20x25x4", "filter", "17.10", "2026-10-01", "filter 160");
        check("filter-16x25x1", "filter", "4.20", "2026-08-31", "filter 150");
        check("pump", "pump", "19.99", "2026-06-01", " 100");
        check("pump", "pump", "20.00", "2026-06-01", " 60");
        check("motor", null, "200.00", "2026-06-01", " 35");
        check("motor", null, "200.00", "2027-01-01", " 120");
        check("motor", null, "200.00", "2025-12-31", "none");
    }

    @Test
    void the_rules_of_parts_and_kinds_on_a_day_are_the_latest_that_have_not_ended() {
        named("2025-12-31");
        named("2026-02-28", "kind filter 150");
        named("2026-03-01", "part filter-20x25x4 90", "kind filter 150");
        named("2026-10-01", "kind filter 160");
    }

    private static void named(String day, String... expected) {
        assertEquals(
                List.of(expected),
                RULES.named(LocalDate.parse(day)).stream()
                        .map(rule -> rule.scope().code() + " " + rule.item() + " " + rule.percent())
                        .toList());
        assertEquals(Scope.KIND, Scope.of("kind"));
    }

    private static void check(String code, @Nullable String kind, String cost, String day, String expected) {
        assertEquals(
                expected,
                RULES.on(code, kind, cad(cost), LocalDate.parse(day))
                        .map(rule -> rule.item() + " " + rule.percent())
                        .orElse("none"));
    }

    @Test
    void a_cost_alone_has_a_price_from_its_day_and_another_where_its_rule_changes() {
        entries(
                "2026-02-01 42.75, 2026-03-01 32.50, 2026-10-01 44.50, 2026-11-15 46.75",
                cost("filter-20x25x4", "filter", "17.10", "2026-02-01"),
                cost("filter-20x25x4", "filter", "18.00", "2026-11-15"));
        entries(
                "2026-02-01 39.00, 2026-06-01 42.75, 2026-08-01 45.00",
                written("filter-16x25x1", "39.00", "2026-02-01"),
                cost("filter-16x25x1", "filter", "17.10", "2026-06-01"),
                written("filter-16x25x1", "45.00", "2026-08-01"));
        entries(
                "2026-01-01 2.00, 2026-05-01 79.00",
                written("pump", "79.00", "2026-05-01"),
                cost("pump", null, "1.00", "2025-01-01"));
    }

    private static void entries(String expected, PriceRow... rows) {
        var before = LocalDate.of(2026, 12, 31);
        assertEquals(
                expected,
                PriceBook.of(List.of(rows), RULES, List.of()).entries().stream()
                        .filter(entry -> !entry.from().isAfter(before))
                        .map(entry -> entry.from() + " " + entry.price().decimal())
                        .collect(Collectors.joining(", ")));
    }

    private static PriceRow cost(String code, @Nullable String kind, String cost, String from) {
        return new PriceRow(ItemKind.PART, code, kind, null, cad(cost), LocalDate.parse(from));
    }

    private static PriceRow written(String code, String price, String from) {
        return new PriceRow(ItemKind.PART, code, "filter", cad(price), null, LocalDate.parse(from));
    }

    private static MarkUp byCost(String costFrom, String percent, String step, String from) {
        return new MarkUp(Scope.COST, "", cad(costFrom), new BigDecimal(percent), cad(step), LocalDate.parse(from));
    }

    private static MarkUp rule(Scope scope, String item, @Nullable String percent, String step, String from) {
        BigDecimal more = percent == null ? null : new BigDecimal(percent);
        return new MarkUp(scope, item, cad("0.00"), more, cad(step), LocalDate.parse(from));
    }

    private static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }
}
