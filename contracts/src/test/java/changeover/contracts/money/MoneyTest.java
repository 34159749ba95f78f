package changeover.contracts.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class MoneyTest {

    private static final Currency CAD = Currency.getInstance("CAD");

    @Test
    void aPercentageIsRoundedHalfUp() {
        percent("249.00", "5", "12.45");
        percent("249.00", "9.975", "24.84");
        percent("189.50", "5", "9.48");
        percent("0.10", "5", "0.01");
        percent("0.09", "5", "0.00");
        percent("-0.10", "5", "-0.01");
        percent("523.95", "13", "68.11");
    }

    @Test
    void instalmentsLoseNoCentAndTheOddOnesAreOnTheFirst() {
        split("249.00", 12, "20.75", "20.75");
        split("250.00", 12, "20.87", "20.83");
        split("100.00", 3, "33.34", "33.33");
        split("0.02", 3, "0.02", "0.00");
        split("-100.00", 3, "-33.34", "-33.33");
        RandomGenerator random = RandomGenerator.of("L64X128MixRandom");
        for (int round = 0; round < 1000; round++) {
            Money whole = new Money(random.nextLong(-1_000_000, 1_000_000), CAD);
            int parts = random.nextInt(1, 40);
            assertEquals(whole, Money.sum(whole.split(parts), CAD), whole + " in " + parts);
        }
    }

    @Test
    void sharesSumToTheWhole() {
        shares("249.00", List.of("140", "160", "40"), "102.53", "117.18", "29.29");
        shares("80.00", List.of("20", "30", "40"), "17.78", "26.67", "35.55");
        shares("1.00", List.of("1", "1", "1"), "0.33", "0.33", "0.34");
        shares("0.03", List.of("1", "1", "1", "1", "1", "1"), "0.01", "0.01", "0.01", "0.00", "0.00", "0.00");
        shares("-0.03", List.of("1", "1", "1", "1", "1", "1"), "-0.01", "-0.01", "-0.01", "0.00", "0.00", "0.00");
    }

    @Test
    void aFractionOfATermIsRoundedHalfUp() {
        assertEquals(Money.of("92.78", "CAD"), Money.of("249.00", "CAD").fraction(136, 365));
        assertEquals(Money.of("5.74", "EUR"), Money.of("523.95", "EUR").fraction(4, 365));
    }

    @Test
    void anAmountKnowsItsSideOfNought() {
        side("-0.01", true, false, false, "0.00", "0.01");
        side("0.00", false, true, false, "0.00", "0.00");
        side("0.01", false, false, true, "0.01", "-0.01");
    }

    @Test
    void amountsAreComparedInOneCurrency() {
        assertEquals(0, Money.of("1.10", "CAD").compareTo(Money.of("1.1", "CAD")));
        assertEquals(-1, Money.of("-1.00", "CAD").compareTo(Money.of("0.99", "CAD")));
        assertEquals(1, Money.of("1.00", "CAD").compareTo(Money.of("0.99", "CAD")));
        assertThrows(IllegalArgumentException.class, () -> Money.of("1", "CAD").compareTo(Money.of("1", "USD")));
    }

    @Test
    void aCountOfAnAmountIsExact() {
        assertEquals("62.25", Money.of("20.75", "CAD").times(3).decimal());
        assertThrows(ArithmeticException.class, () -> new Money(Long.MAX_VALUE, CAD).times(2));
        assertThrows(ArithmeticException.class, () -> new Money(Long.MIN_VALUE, CAD).negated());
        assertEquals("20.75 CAD", Money.of("20.75", "CAD").toString());
    }

    @Test
    void peopleReadItInTheirLanguage() {
        format("1234.56", "CAD", "$1,234.56", "1\u00a0234,56\u00a0$");
        format("0.05", "CAD", "$0.05", "0,05\u00a0$");
        format("-1234567.80", "CAD", "-$1,234,567.80", "-1\u00a0234\u00a0567,80\u00a0$");
        format("12.00", "USD", "US$12.00", "12,00\u00a0$\u00a0US");
        format("12", "JPY", "JPY\u00a012", "12\u00a0JPY");
        format("999.99", "EUR", "€999.99", "999,99\u00a0€");
    }

    @Test
    void wrongAmountsAreRefused() {
        assertThrows(ArithmeticException.class, () -> Money.of("0.001", "CAD"));
        assertThrows(IllegalArgumentException.class, () -> Money.of("1", "CAD").plus(Money.of("1", "USD")));
        assertThrows(ArithmeticException.class, () -> new Money(Long.MAX_VALUE, CAD).plus(new Money(1, CAD)));
        assertThrows(IllegalArgumentException.class, () -> Money.of("1", "CAD").split(0));
        assertThrows(IllegalArgumentException.class, () -> Money.of("1", "CAD").shares(List.of()));
    }

    @Test
    void theApiReadsAPlainDecimal() {
        assertEquals("1234.56", Money.ofMinor(123456, "CAD").decimal());
        assertEquals("-0.05", Money.ofMinor(-5, "CAD").decimal());
        assertEquals("0.00", Money.zero(CAD).decimal());
        assertEquals(
                "2.88", Money.of("1.15", "CAD").times(new BigDecimal("2.5")).decimal());
    }

    private static void side(
            String amount, boolean below, boolean nought, boolean above, String aboveNought, String negated) {
        Money money = Money.of(amount, "CAD");
        assertEquals(List.of(below, nought, above), List.of(money.isNegative(), money.isZero(), money.isPositive()));
        assertEquals(Money.of(aboveNought, "CAD"), money.aboveNought());
        assertEquals(Money.of(negated, "CAD"), money.negated());
    }

    private static void percent(String of, String percent, String expected) {
        assertEquals(Money.of(expected, "CAD"), Money.of(of, "CAD").percent(new BigDecimal(percent)));
    }

    private static void split(String whole, int parts, String first, String other) {
        List<Money> split = Money.of(whole, "CAD").split(parts);
        assertEquals(parts, split.size());
        assertEquals(first, split.getFirst().decimal());
        assertEquals(other, split.getLast().decimal());
        assertEquals(Money.of(whole, "CAD"), Money.sum(split, CAD));
    }

    private static void shares(String whole, List<String> weights, String... expected) {
        List<Money> shares = Money.of(whole, "CAD")
                .shares(weights.stream().map(BigDecimal::new).toList());
        assertEquals(List.of(expected), shares.stream().map(Money::decimal).toList());
    }

    private static void format(String amount, String currency, String english, String french) {
        assertEquals(english, Money.of(amount, currency).format(Locale.CANADA));
        assertEquals(french, Money.of(amount, currency).format(Locale.CANADA_FRENCH));
    }
}
