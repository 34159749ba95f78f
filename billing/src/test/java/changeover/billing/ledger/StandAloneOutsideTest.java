package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Figures published by others, in minutes of an hour at 60.00. */
class StandAloneOutsideTest {

    static final Currency CAD = Currency.getInstance("CAD");

    private static void check(String price, int[] minutes, String... shares) {
        List<StandAlone.Task> tasks = Arrays.stream(minutes)
                .mapToObj(one -> new StandAlone.Task("task " + one, one))
                .toList();
        StandAlone split = StandAlone.of(
                new StandAlone.Facts(tasks, List.of(), 0, false), Money.of("60.00", "CAD"), Map.of(), CAD);
        assertEquals(EarnedOn.Basis.PRICES, split.basis());
        assertEquals(
                List.of(shares),
                Recognition.of(
                                Money.of(price, "CAD"),
                                Term.ofYear(LocalDate.of(2026, 4, 1)),
                                split.promised(),
                                List.of())
                        .shares()
                        .stream()
                        .map(share -> share.amount().decimal())
                        .toList());
    }

    /** IFRS 15, Illustrative Example 33: 50, 25 and 75 alone, sold for 100: printed 50 of 150 and so on, 33, 17 and 50. */
    @Test
    void example_33() {
        check("100.00", new int[] {50, 25, 75}, "33.33", "16.67", "50.00");
    }

    /** KPMG, Revenue: IFRS 15 handbook (2019), example 5 in 4.2.1: 20, 30 and 40 alone, sold for 80: printed 18, 27, 35. */
    @Test
    void a_bundle_of_three() {
        check("80.00", new int[] {20, 30, 40}, "17.78", "26.67", "35.55");
    }

    @Test
    void nothing_to_do_is_earned_by_day_and_a_part_without_a_price_is_a_quarter_of_an_hour() {
        StandAlone days = StandAlone.of(new StandAlone.Facts(List.of(), List.of(), 0, false), null, Map.of(), CAD);
        assertEquals(EarnedOn.Basis.DAYS, days.basis());
        StandAlone part = StandAlone.of(
                new StandAlone.Facts(
                        List.of(), List.of(new StandAlone.Part("filter", new BigDecimal("1.50"))), 0, true),
                Money.of("80.00", "CAD"),
                Map.of(),
                CAD);
        assertEquals(
                List.of("part filter 1 20.00", "part filter 2 20.00", "repairs 80.00"),
                part.promised().stream()
                        .map(one -> one.name() + " " + one.alone().decimal())
                        .toList());
        assertEquals(EarnedOn.Basis.ASSUMED, part.basis());
    }
}
