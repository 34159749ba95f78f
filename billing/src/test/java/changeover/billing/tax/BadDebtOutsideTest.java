package changeover.billing.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.money.Money;
import java.util.Currency;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Excise Tax Act, s. 231(1), from memory: the tax given back is A × B / C, with A the tax of the supply, B what of the debt and
 * its taxes is written off, C the debt and its taxes. Computed by hand from it.
 */
class BadDebtOutsideTest {

    private static final Currency CAD = Currency.getInstance("CAD");

    @Test
    void a_tax_is_given_up_in_the_part_that_the_debt_is_of_the_whole() {
        check("113.00", "13.00", "113.00", "0.00", "13.00");
        check("113.00", "13.00", "56.50", "0.00", "6.50");
        check("286.29", "24.84", "100.00", "0.00", "8.68");
        check("286.29", "24.84", "286.29", "8.68", "16.16");
        check("286.29", "24.84", "0.00", "8.68", "-8.68");
        check("0.00", "0.00", "0.00", "1.00", "-1.00");
    }

    private static void check(String total, String tax, String given, String before, String expected) {
        Money share = new BadDebt(money(total)).share(money(tax), money(given), money(before));
        assertEquals(expected, share.decimal());
    }

    private static Money money(String amount) {
        return Money.of(amount, "CAD");
    }

    /** Parts in any size: no cent of tax is given up twice, and the last part takes the rest. */
    @Test
    void the_shares_of_all_parts_are_the_tax() {
        Random random = new Random(20261130);
        for (int trial = 0; trial < 10_000; trial++) {
            long total = 1 + random.nextLong(1_000_000);
            long tax = random.nextLong(total);
            BadDebt debt = new BadDebt(new Money(total, CAD));
            long given = 0;
            Money shared = Money.zero(CAD);
            while (given < total) {
                given += 1 + random.nextLong(total - given);
                shared = shared.plus(debt.share(new Money(tax, CAD), new Money(given, CAD), shared));
            }
            assertEquals(tax, shared.minor());
        }
    }
}
