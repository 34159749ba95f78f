package changeover.billing.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.pricing.WarrantyFacts.Fitted;
import changeover.billing.pricing.WarrantyFacts.Law;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The maker before us, we before the law, the law before nobody; of the labour we and the law all the same. */
class WarrantiesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 12, 1);

    private static void check(WarrantyFacts facts, String expected) {
        Warranty warranty = Warranties.of(facts, DAY);
        assertEquals(
                expected,
                warranty.by()
                        + (warranty.why() == null ? "" : " " + warranty.why().en())
                        + (warranty.labour() == null
                                ? ""
                                : " " + warranty.labour().en()));
    }

    private static WarrantyFacts facts(String why, String makerUntil, Fitted fitted, Law law) {
        return new WarrantyFacts(why, makerUntil == null ? null : LocalDate.parse(makerUntil), null, fitted, law);
    }

    private static Fitted fitted(String day, int makers, int ours) {
        return new Fitted(LocalDate.parse(day), makers, ours);
    }

    private static Law law(String installed, int months) {
        return new Law(LocalDate.parse(installed), months, "The act, s. 1");
    }

    @Test
    void the_maker_of_the_machine_answers_through_the_last_day() {
        check(
                facts("repair", "2026-12-01", null, null),
                "MAKER No charge: under the maker’s warranty, until 1 December 2026.");
        check(facts("repair", "2026-11-30", null, null), "NOBODY The maker’s warranty ended on 30 November 2026.");
        check(facts("warranty", "2026-11-30", null, null), "NOBODY The maker’s warranty ended on 30 November 2026.");
        check(
                new WarrantyFacts("repair", LocalDate.of(2031, 6, 3), "R-4471", null, null),
                "MAKER No charge: under the maker’s warranty (registration R-4471), until 3 June 2031.");
        check(
                new WarrantyFacts("repair", LocalDate.of(2031, 6, 3), " ", null, null),
                "MAKER No charge: under the maker’s warranty, until 3 June 2031.");
    }

    @Test
    void what_the_plan_gives_or_the_customer_asked_for_is_asked_of_nobody() {
        check(facts("plan", "2031-06-03", fitted("2026-11-01", 60, 12), law("2026-11-01", 36)), "PLAN");
        check(facts("extra", "2031-06-03", fitted("2026-11-01", 60, 12), law("2026-11-01", 36)), "NOBODY");
    }

    @Test
    void the_maker_of_the_part_answers_from_the_day_it_was_fitted() {
        check(
                facts("repair", null, fitted("2025-12-02", 12, 0), null),
                "MAKER No charge: under the part’s own maker’s warranty, until 1 December 2026.");
        check(facts("repair", null, fitted("2025-12-01", 12, 0), null), "NOBODY");
        check(
                facts("repair", "2020-01-01", fitted("2025-12-02", 12, 12), null),
                "MAKER No charge: under the part’s own maker’s warranty, until 1 December 2026."
                        + " No charge for labour and trip: we fitted this part on 2 December 2025 and answer for it,"
                        + " until 1 December 2026.");
    }

    @Test
    void the_makers_part_leaves_labour_and_trip_to_us_then_to_the_law() {
        String part = "MAKER No charge: under the maker’s warranty, until 3 June 2031.";
        check(facts("repair", "2031-06-03", null, null), part);
        check(
                facts("repair", "2031-06-03", fitted("2026-09-02", 0, 12), law("2026-11-01", 36)),
                part + " No charge for labour and trip: we fitted this part on 2 September 2026 and answer for it,"
                        + " until 1 September 2027.");
        check(facts("repair", "2031-06-03", fitted("2025-12-01", 0, 12), null), part);
        check(
                facts("warranty", "2031-06-03", fitted("2025-12-01", 0, 12), law("2026-11-01", 36)),
                part + " No charge for labour and trip: under the warranty that the law gives (The act, s. 1),"
                        + " until 31 October 2029.");
        assertEquals(
                "Sans frais de main-d’œuvre ni de déplacement : nous avons posé cette pièce le 2 septembre 2026 et en"
                        + " répondons, jusqu’au 1er septembre 2027.",
                Warranties.of(facts("repair", "2031-06-03", fitted("2026-09-02", 0, 12), null), DAY)
                        .labour()
                        .fr());
    }

    @Test
    void we_answer_for_what_we_fitted_before_the_law_is_asked() {
        check(
                facts("repair", null, fitted("2026-09-02", 0, 3), law("2026-11-01", 36)),
                "US No charge: we fitted this part on 2 September 2026 and answer for it, until 1 December 2026.");
        check(
                facts("warranty", null, fitted("2026-09-01", 0, 3), law("2026-11-01", 36)),
                "LAW No charge: under the warranty that the law gives (The act, s. 1), until 31 October 2029.");
        check(facts("warranty", null, fitted("2026-09-01", 2, 3), law("2023-12-01", 36)), "NOBODY");
        check(facts("repair", null, fitted("2026-09-02", 0, 0), law("2023-12-01", 36)), "NOBODY");
        check(
                facts("repair", null, null, law("2023-12-02", 36)),
                "LAW No charge: under the warranty that the law gives (The act, s. 1), until 1 December 2026.");
    }

    @Test
    void where_no_day_is_known_the_word_of_whoever_was_there_counts() {
        check(facts("warranty", null, null, null), "MAKER No charge: under the maker’s warranty.");
        check(
                facts("warranty", null, fitted("2020-01-01", 0, 3), null),
                "MAKER No charge: under the maker’s warranty.");
        check(facts("repair", null, null, null), "NOBODY");
    }

    @Test
    void french_says_the_first_of_a_month() {
        assertEquals(
                "Sans frais : sous la garantie du fabricant, jusqu’au 1er décembre 2026.",
                Warranties.of(facts("repair", "2026-12-01", null, null), DAY)
                        .why()
                        .fr());
        assertEquals(
                "Sans frais : nous avons posé cette pièce le 2 septembre 2026 et en répondons, jusqu’au 1er décembre 2026.",
                Warranties.of(facts("repair", null, fitted("2026-09-02", 0, 3), null), DAY)
                        .why()
                        .fr());
    }
}
