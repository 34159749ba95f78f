package changeover.billing.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class TaxTableTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 12, 31);

    private static final TaxRow ALL = row("all", null, null, null);
    private static final TaxRow HOMES = row("homes", PropertyUse.RESIDENTIAL, null, null);
    private static final TaxRow HOMES_TOO = row("homes-too", PropertyUse.RESIDENTIAL, null, null);
    private static final TaxRow UPKEEP = row("upkeep", PropertyUse.RESIDENTIAL, Work.MAINTENANCE, null);
    private static final TaxRow PLANS = row("plans", PropertyUse.RESIDENTIAL, Work.MAINTENANCE, ContractForm.PLAN);
    private static final TaxRow ANY_PLAN = row("any-plan", null, null, ContractForm.PLAN);

    @Test
    void a_row_holds_from_its_first_day_to_its_last() {
        check(List.of(ALL), question(FIRST.minusDays(1)), "unknown");
        check(List.of(ALL), question(FIRST), "all");
        check(List.of(ALL), question(LAST), "all");
        check(List.of(ALL), question(LAST.plusDays(1)), "unknown");
    }

    @Test
    void the_rows_that_say_most_of_the_case_answer_together() {
        check(List.of(ALL, HOMES, HOMES_TOO), question(FIRST), "homes", "homes-too");
        check(List.of(ALL, UPKEEP, HOMES), question(FIRST), "upkeep");
        check(List.of(PLANS, UPKEEP, HOMES, ALL), question(FIRST), "plans");
        check(List.of(ALL, ANY_PLAN), question(FIRST), "any-plan");
    }

    @Test
    void a_row_about_another_property_work_or_contract_is_silent() {
        TaxQuestion shop = new TaxQuestion("XX-AA", PropertyUse.COMMERCIAL, Work.REPAIR, ContractForm.SEPARATE, FIRST);
        check(List.of(ALL, HOMES, UPKEEP, PLANS, ANY_PLAN), shop, "all");
        TaxQuestion repair = new TaxQuestion("XX-AA", PropertyUse.RESIDENTIAL, Work.REPAIR, ContractForm.PLAN, FIRST);
        check(List.of(ALL, HOMES, UPKEEP, PLANS), repair, "homes");
        TaxQuestion apart =
                new TaxQuestion("XX-AA", PropertyUse.RESIDENTIAL, Work.MAINTENANCE, ContractForm.SEPARATE, FIRST);
        check(List.of(UPKEEP, PLANS), apart, "upkeep");
        TaxQuestion elsewhere =
                new TaxQuestion("XX-BB", PropertyUse.RESIDENTIAL, Work.MAINTENANCE, ContractForm.PLAN, FIRST);
        check(List.of(ALL, PLANS), elsewhere, "unknown");
    }

    @Test
    void the_businesss_own_rows_outrank_more_precise_ones_that_are_shipped() {
        TaxTable table = new TaxTable(List.of(PLANS), List.of(ALL));
        assertEquals(List.of("all"), codes(table.taxesFor(question(FIRST))));
        assertEquals(List.of("unknown"), codes(table.taxesFor(question(LAST.plusDays(1)))));
    }

    @Test
    void a_row_is_named_by_everything_that_it_says_of_the_case() {
        assertEquals("XX-AA all 2026-01-01 any any any", ALL.key());
        assertEquals("XX-AA plans 2026-01-01 residential maintenance plan", PLANS.key());
    }

    private static void check(List<TaxRow> rows, TaxQuestion question, String... codes) {
        assertEquals(List.of(codes), codes(new TaxTable(rows, List.of()).taxesFor(question)));
    }

    private static List<String> codes(TaxAnswer answer) {
        return switch (answer) {
            case TaxAnswer.Known known -> known.taxes().stream().map(Tax::code).toList();
            case TaxAnswer.Unknown unknown -> List.of("unknown");
        };
    }

    private static TaxQuestion question(LocalDate day) {
        return new TaxQuestion("XX-AA", PropertyUse.RESIDENTIAL, Work.MAINTENANCE, ContractForm.PLAN, day);
    }

    private static TaxRow row(
            String code, @Nullable PropertyUse property, @Nullable Work work, @Nullable ContractForm form) {
        Wording label = new Wording(code, code);
        Tax tax = new Tax(code, label, "S", new BigDecimal("5"), "XX-AA", null, "made up for this test", true);
        return new TaxRow(tax, property, work, form, FIRST, LAST);
    }
}
