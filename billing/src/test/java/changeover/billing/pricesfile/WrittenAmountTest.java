package changeover.billing.pricesfile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class WrittenAmountTest {

    @Test
    void an_amount_is_understood_in_either_language_where_it_can_mean_one_thing_only() {
        check("38", "38");
        check("38.5", "38.5");
        check("38.00", "38.00");
        check("38,5", "38.5");
        check("38,00 $", "38.00");
        check("$1,234.56", "1234.56");
        check("1 234,56", "1234.56");
        check("1\u00a0234,56\u00a0$", "1234.56");
        check("1.234,56", "1234.56");
        check("1,234,567.89", "1234567.89");
    }

    @Test
    void what_may_mean_two_things_or_nothing_is_not() {
        for (String twofold : new String[] {"1,234", "1.234", "12,345,678"}) {
            check(twofold, "none");
            assertEquals(true, WrittenAmount.isTwofold(twofold));
        }
        for (String none : new String[] {"", "-5.00", "12.3456", "abc", "1.2.3", "1e5", "1,2345", "12345678901"}) {
            check(none, "none");
            assertEquals(false, WrittenAmount.isTwofold(none));
        }
    }

    private static void check(String cell, String expected) {
        assertEquals(
                expected,
                WrittenAmount.read(cell).map(BigDecimal::toPlainString).orElse("none"));
    }
}
