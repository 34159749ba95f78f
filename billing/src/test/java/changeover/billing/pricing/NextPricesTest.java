package changeover.billing.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The next version of the book, reckoned by hand beside each figure. */
class NextPricesTest {

    static final LocalDate NEXT = LocalDate.of(2027, 1, 1);
    static final MarkUp DOUBLE = new MarkUp(
            MarkUp.Scope.COST, "", cad("0.00"), new BigDecimal("100"), cad("0.05"), LocalDate.of(2026, 1, 1));
    static final PriceBook BOOK = PriceBook.of(
            List.of(
                    row(ItemKind.LABOUR, "hour", "112.00", "57.00", "2026-01-01"),
                    row(ItemKind.TRAVEL, "visit", "45.00", null, "2026-01-01"),
                    row(ItemKind.TRAVEL, "visit", "50.00", null, "2027-01-01"),
                    row(ItemKind.PART, "filter", "38.00", "15.75", "2026-03-01"),
                    row(ItemKind.PART, "later", "9.00", null, "2027-02-01"),
                    new PriceRow(ItemKind.PART, "pad", null, null, cad("4.20"), LocalDate.of(2026, 1, 1)),
                    row(ItemKind.PART, "gift", "0.00", null, "2026-01-01")),
            new MarkUps(List.of(DOUBLE)),
            List.of());

    @Test
    void each_written_price_rises_from_what_it_is_the_day_before() {
        check(
                "0.05",
                "3",
                "3",
                "3",
                "part filter 38.00 39.15",
                "labour hour 112.00 115.35",
                "travel visit 45.00 46.35 for 50.00"); // 39.14, 115.36, 46.35
        check("1.00", "2.5", "0", "0", "part filter 38.00 39.00"); // 38.95
        check(
                "0.25",
                "0",
                "5",
                "12",
                "labour hour 112.00 117.50",
                "travel visit 45.00 50.50 for 50.00"); // 117.60, 50.40
        check("0.01", "-10", "0", "0", "part filter 38.00 34.20");
    }

    @Test
    void what_stays_is_not_written_and_what_that_day_says_already_neither() {
        check("1.00", "1", "0", "0"); // 38.38 is 38 again
        check("5.00", "0", "0", "12"); // 50.40 is the 50.00 of that day
    }

    private static void check(String step, String part, String labour, String travel, String... expected) {
        var version = new NextPrices(
                NEXT,
                Map.of(
                        ItemKind.PART, new BigDecimal(part),
                        ItemKind.LABOUR, new BigDecimal(labour),
                        ItemKind.TRAVEL, new BigDecimal(travel)),
                cad(step));
        assertEquals(
                String.join("\n", expected),
                version.of(BOOK).stream()
                        .map(change -> change.kind().code() + " " + change.code() + " "
                                + change.before().decimal() + " "
                                + change.after().decimal()
                                + (change.replaced() == null
                                        ? ""
                                        : " for " + change.replaced().decimal()))
                        .collect(Collectors.joining("\n")));
        assertEquals(expected.length, version.rows(BOOK).size());
    }

    private static PriceRow row(ItemKind kind, String code, String price, String cost, String from) {
        return new PriceRow(kind, code, null, cad(price), cost == null ? null : cad(cost), LocalDate.parse(from));
    }

    private static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }
}
