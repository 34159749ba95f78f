package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ledger.Promised.Earned;
import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Figures published by others. */
class RecognitionOutsideTest {

    private static final Term YEAR = Term.ofYear(LocalDate.of(2026, 4, 1));

    /** IFRS 15, Illustrative Example 33: products that cost 50, 25 and 75 alone, sold for 100: 33, 17 and 50. */
    @Test
    void a_discount_is_shared_in_proportion() {
        shares("100.00", List.of("50", "25", "75"), List.of(), "33.33", "16.67", "50.00");
    }

    /** IFRS 15, Illustrative Example 34, Case A: 40, 55 and 45 for 100, the last two regularly sold for 60: 40, 33 and 27. */
    @Test
    void a_discount_of_two_that_are_sold_together_is_theirs() {
        shares(
                "100.00",
                List.of("40", "55", "45"),
                List.of(new SoldTogether(List.of("b", "c"), money("60"))),
                "40.00",
                "33.00",
                "27.00");
    }

    /**
     * KPMG, Revenue: IFRS 15 handbook (2019), example 5 in 4.2.1: 20, 30 and 40 sold for 80; printed 18, 27 and 35. To the
     * cent the last takes what is left.
     */
    @Test
    void the_last_share_takes_what_is_left() {
        shares("80.00", List.of("20", "30", "40"), List.of(), "17.78", "26.67", "35.55");
    }

    /** 249.00 over 365 days, 136 of them over: 92.78 earned; a year in twelve parts is 20.75 a month where months are alike. */
    @Test
    void standing_ready_is_earned_by_day() {
        Recognition ready = Recognition.of(
                money("249.00"), YEAR, List.of(new Promised("ready", money("249.00"), Earned.BY_DAY)), List.of());
        assertEquals(
                "92.78", ready.earnedBefore(LocalDate.of(2026, 8, 15), Map.of()).decimal());
        assertEquals(
                "156.22", ready.owedBefore(LocalDate.of(2026, 8, 15), Map.of()).decimal());
    }

    private static void shares(String price, List<String> alone, List<SoldTogether> together, String... expected) {
        List<Promised> promised = new ArrayList<>();
        for (String one : alone) {
            promised.add(new Promised(String.valueOf((char) ('a' + promised.size())), money(one), Earned.WHEN_DONE));
        }
        assertEquals(
                List.of(expected),
                Recognition.of(money(price), YEAR, promised, together).shares().stream()
                        .map(share -> share.amount().decimal())
                        .toList());
    }

    private static Money money(String amount) {
        return Money.of(amount, "CAD");
    }
}
