package changeover.billing.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.words.Refusals;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class TaxTableTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 12, 31);

    private static final TaxRow ALL = row("all", null, null, null);
    private static final TaxRow HOMES = row("homes", PropertyUse.RESIDENTIAL, null, null);
    private static final TaxRow UPKEEP = row("upkeep", PropertyUse.RESIDENTIAL, Work.MAINTENANCE, null);
    private static final TaxRow PLANS = row("plans", PropertyUse.RESIDENTIAL, Work.MAINTENANCE, ContractForm.PLAN);
    private static final TaxRow ANY_PLAN = row("any-plan", null, null, ContractForm.PLAN);
    private static final TaxRow ANY_UPKEEP = row("any-upkeep", null, Work.MAINTENANCE, null);
    private static final TaxRow OTHER = of("other", "other", null, null, null, FIRST, LAST);

    @Test
    void a_row_holds_from_its_first_day_to_its_last() {
        check(List.of(ALL), question(FIRST.minusDays(1)), "unknown");
        check(List.of(ALL), question(FIRST), "all");
        check(List.of(ALL), question(LAST), "all");
        check(List.of(ALL), question(LAST.plusDays(1)), "unknown");
    }

    @Test
    void of_one_tax_the_row_that_says_most_of_the_case_is_used() {
        check(List.of(ALL, UPKEEP, HOMES), question(FIRST), "upkeep");
        check(List.of(PLANS, UPKEEP, HOMES, ALL), question(FIRST), "plans");
        check(List.of(ALL, ANY_PLAN), question(FIRST), "any-plan");
        check(List.of(ALL, ANY_UPKEEP), question(FIRST), "any-upkeep");
    }

    @Test
    void a_precise_row_of_one_tax_leaves_the_places_other_taxes() {
        check(List.of(ALL, PLANS, OTHER), question(FIRST), "plans", "other");
        check(List.of(OTHER, PLANS), question(FIRST), "other", "plans");
    }

    @Test
    void of_rows_that_say_as_much_the_one_that_began_last_is_used() {
        TaxRow later = of("tax", "later", null, null, null, LAST, null);
        check(List.of(ALL, later), question(LAST.minusDays(1)), "all");
        check(List.of(ALL, later), question(LAST), "later");
        check(List.of(later, ALL), question(LAST), "later");
        check(List.of(later, UPKEEP), question(LAST), "upkeep");
        check(List.of(later, ALL), question(LAST.plusDays(1)), "later");
    }

    @Test
    void on_a_tie_the_building_decides_before_the_work_and_the_work_before_the_contract() {
        check(List.of(HOMES, ANY_UPKEEP), question(FIRST), "homes");
        check(List.of(ANY_UPKEEP, HOMES), question(FIRST), "homes");
        check(List.of(ANY_PLAN, ANY_UPKEEP), question(FIRST), "any-upkeep");
        check(List.of(ANY_UPKEEP, ANY_PLAN), question(FIRST), "any-upkeep");
        check(List.of(ALL, row("twice", null, null, null)), question(FIRST), "all");
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
    void an_own_row_takes_the_place_of_the_shipped_rows_of_its_tax() {
        TaxTable table = new TaxTable(List.of(PLANS, OTHER), List.of(ALL));
        assertEquals(List.of("all", "other"), codes(table.taxesFor(question(FIRST))));
        assertEquals(List.of("unknown"), codes(table.taxesFor(question(LAST.plusDays(1)))));
        TaxTable local = new TaxTable(List.of(ALL), List.of(OTHER));
        assertEquals(List.of("all", "other"), codes(local.taxesFor(question(FIRST))));
    }

    @Test
    void an_own_harmonized_tax_takes_the_place_of_the_two_that_it_is() {
        TaxRow gst = of("gst", "gst", null, null, null, FIRST, LAST);
        TaxRow pst = of("pst", "pst", null, null, null, FIRST, LAST);
        TaxRow hst = of("hst", "hst", null, null, null, FIRST, LAST);
        assertEquals(
                List.of("other", "hst"),
                codes(new TaxTable(List.of(gst, pst, OTHER), List.of(hst)).taxesFor(question(FIRST))));
        assertEquals(
                List.of("gst", "pst", "other"),
                codes(new TaxTable(List.of(gst, pst), List.of(OTHER)).taxesFor(question(FIRST))));
    }

    /** The day is said in words, and of the rows that hold on it only. */
    @Test
    void a_place_known_for_other_cases_only_says_for_which() {
        TaxQuestion repair =
                new TaxQuestion("XX-AA", PropertyUse.COMMERCIAL, Work.REPAIR, ContractForm.SEPARATE, FIRST);
        TaxTable table = new TaxTable(List.of(PLANS, ANY_PLAN), List.of(PLANS));
        assertEquals(
                "For XX-AA on 1\u00a0January 2026 a tax is known for other cases only (residential, maintenance, a plan for a term;"
                        + " a plan for a term), and none for this one: commercial, repair, parts and labour apart. Choose on the"
                        + " line what kind of work it is and how its price was agreed, or add the tax of this case with its source.",
                sentence(table.taxesFor(repair)));
        TaxQuestion later =
                new TaxQuestion("XX-AA", PropertyUse.COMMERCIAL, Work.REPAIR, ContractForm.SEPARATE, LAST.plusDays(1));
        assertEquals(
                "No tax is known for XX-AA on 1\u00a0January 2027. Add its tax with its source before issuing; nothing is issued"
                        + " without it.",
                sentence(table.taxesFor(later)));
    }

    @Test
    void what_a_new_row_makes_a_place_charge_is_said_for_its_cases() {
        TaxTable table = new TaxTable(List.of(ALL, ANY_UPKEEP, OTHER), List.of(HOMES));
        TaxRow shops = row("shops", PropertyUse.COMMERCIAL, null, null);
        assertEquals(List.of("shops", "other"), labels(table.chargedWith(shops)));
        TaxRow local = of("local", "local", null, null, null, FIRST, null);
        assertEquals(List.of("homes", "other", "local", "any-upkeep", "all"), labels(table.chargedWith(local)));
    }

    @Test
    void a_row_is_named_by_everything_that_it_says_of_the_case() {
        assertEquals("XX-AA tax 2026-01-01 any any any", ALL.key());
        assertEquals("XX-AA tax 2026-01-01 residential maintenance plan", PLANS.key());
    }

    @Test
    void rows_meet_where_one_place_has_a_day_in_both() {
        TaxRow after = of("tax", "after", null, null, null, LAST.plusDays(1), null);
        TaxRow on = of("tax", "on", null, null, null, LAST, null);
        TaxRow always = of("tax", "always", null, null, null, FIRST.minusYears(9), null);
        assertEquals(
                List.of(false, false, true, true, true, true),
                List.of(
                        ALL.meets(after),
                        after.meets(ALL),
                        ALL.meets(on),
                        on.meets(ALL),
                        always.meets(ALL),
                        ALL.meets(always)));
    }

    private static void check(List<TaxRow> rows, TaxQuestion question, String... codes) {
        assertEquals(List.of(codes), codes(new TaxTable(rows, List.of()).taxesFor(question)));
    }

    private static List<String> codes(TaxAnswer answer) {
        return switch (answer) {
            case TaxAnswer.Known known ->
                known.taxes().stream().map(tax -> tax.label().en()).toList();
            case TaxAnswer.Unknown unknown -> List.of("unknown");
        };
    }

    private static List<String> labels(List<TaxRow> rows) {
        return rows.stream().map(row -> row.tax().label().en()).toList();
    }

    private static String sentence(TaxAnswer answer) {
        return Refusals.sentence(((TaxAnswer.Unknown) answer).refusal(), Locale.ENGLISH);
    }

    private static TaxQuestion question(LocalDate day) {
        return new TaxQuestion("XX-AA", PropertyUse.RESIDENTIAL, Work.MAINTENANCE, ContractForm.PLAN, day);
    }

    private static TaxRow row(
            String label, @Nullable PropertyUse property, @Nullable Work work, @Nullable ContractForm form) {
        return of("tax", label, property, work, form, FIRST, LAST);
    }

    private static TaxRow of(
            String code,
            String label,
            @Nullable PropertyUse property,
            @Nullable Work work,
            @Nullable ContractForm form,
            LocalDate from,
            @Nullable LocalDate until) {
        Wording words = new Wording(label, label);
        Tax tax = new Tax(code, words, "S", new BigDecimal("5"), "XX-AA", null, "made up for this test", true);
        return new TaxRow(tax, property, work, form, from, until);
    }
}
