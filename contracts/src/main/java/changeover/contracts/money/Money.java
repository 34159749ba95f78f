package changeover.contracts.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Locale;

/**
 * An amount is a whole number of the currency's smallest coin, and no sum, split or percentage ever loses one.
 *
 * <p>Rounding is half-up, away from zero (Revenu Québec, "Calculating the Taxes": fractions of half a cent and more
 * become a cent). Amounts of two currencies are never added: {@link IllegalArgumentException}. A result beyond a long is
 * an {@link ArithmeticException}.
 *
 * @param minor the amount in minor units (cents), negative when it is owed the other way
 * @param currency ISO 4217
 */
public record Money(long minor, Currency currency) implements Comparable<Money> {

    /** No field takes more, and no document, payment or price is larger; in the currency's main unit. */
    public static final BigDecimal MOST = new BigDecimal("99999999.99");

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** {@code Money.of("249.00", "CAD")}: exact, refuses more decimals than the currency has. */
    public static Money of(String decimal, String currencyCode) {
        return of(new BigDecimal(decimal), Currency.getInstance(currencyCode));
    }

    /** Exact: {@link ArithmeticException} when the amount has a fraction of a minor unit. */
    public static Money of(BigDecimal amount, Currency currency) {
        return new Money(
                amount.movePointRight(currency.getDefaultFractionDigits()).longValueExact(), currency);
    }

    /** The amount rounded half-up to the currency's minor unit. */
    public static Money rounded(BigDecimal amount, Currency currency) {
        return new Money(
                amount.movePointRight(currency.getDefaultFractionDigits())
                        .setScale(0, RoundingMode.HALF_UP)
                        .longValueExact(),
                currency);
    }

    public static Money ofMinor(long minor, String currencyCode) {
        return new Money(minor, Currency.getInstance(currencyCode));
    }

    public static Money zero(Currency currency) {
        return new Money(0, currency);
    }

    /** The sum of the amounts, nought in the given currency when there are none. */
    public static Money sum(Collection<Money> amounts, Currency currency) {
        return amounts.stream().reduce(zero(currency), Money::plus);
    }

    public Money plus(Money other) {
        return new Money(Math.addExact(minor, same(other).minor), currency);
    }

    public Money minus(Money other) {
        return new Money(Math.subtractExact(minor, same(other).minor), currency);
    }

    public Money negated() {
        return new Money(Math.negateExact(minor), currency);
    }

    public Money times(long count) {
        return new Money(Math.multiplyExact(minor, count), currency);
    }

    /** A quantity of it (2.5 hours, 0.75 litre), rounded half-up. */
    public Money times(BigDecimal quantity) {
        return rounded(amount().multiply(quantity), currency);
    }

    /** {@code percent(new BigDecimal("9.975"))} of this amount, rounded half-up. */
    public Money percent(BigDecimal percent) {
        return rounded(amount().multiply(percent).divide(HUNDRED), currency);
    }

    /** This amount times {@code part / whole} (days of a term), rounded half-up. */
    public Money fraction(long part, long whole) {
        return new Money(
                BigDecimal.valueOf(minor)
                        .multiply(BigDecimal.valueOf(part))
                        .divide(BigDecimal.valueOf(whole), 0, RoundingMode.HALF_UP)
                        .longValueExact(),
                currency);
    }

    /** Equal instalments: as many as asked, their sum is exactly this amount, the odd cents are on the first. */
    public List<Money> split(int parts) {
        if (parts < 1) {
            throw new IllegalArgumentException("parts: " + parts);
        }
        long each = minor / parts;
        List<Money> split = new ArrayList<>(parts);
        for (int part = 0; part < parts; part++) {
            split.add(new Money(part == 0 ? minor - each * (parts - 1) : each, currency));
        }
        return List.copyOf(split);
    }

    /**
     * Shares in proportion to the weights, each rounded half-up but never more than is left; the last takes what is left, so
     * that the sum is exact and no share turns its sign.
     *
     * @param weights none below nought
     */
    public List<Money> shares(List<BigDecimal> weights) {
        BigDecimal whole = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (whole.signum() == 0) {
            throw new IllegalArgumentException("weights without a sum: " + weights);
        }
        List<Money> shares = new ArrayList<>(weights.size());
        Money left = this;
        for (int index = 0; index < weights.size(); index++) {
            Money share = index == weights.size() - 1
                    ? left
                    : new Money(
                            BigDecimal.valueOf(minor)
                                    .multiply(weights.get(index))
                                    .divide(whole, 0, RoundingMode.HALF_UP)
                                    .longValueExact(),
                            currency);
            Money taken = Math.abs(share.minor) > Math.abs(left.minor) ? left : share;
            shares.add(taken);
            left = left.minus(taken);
        }
        return List.copyOf(shares);
    }

    public boolean isZero() {
        return minor == 0;
    }

    public boolean isPositive() {
        return minor > 0;
    }

    public boolean isNegative() {
        return minor < 0;
    }

    /** This amount, nought when it is below. */
    public Money aboveNought() {
        return isNegative() ? zero(currency) : this;
    }

    public BigDecimal amount() {
        return BigDecimal.valueOf(minor, currency.getDefaultFractionDigits());
    }

    /** For files and the API: {@code 1234.56}, a point, no grouping. */
    public String decimal() {
        return amount().toPlainString();
    }

    /** For people: {@code $1,234.56} in English, {@code 1 234,56 $} in French with no-break spaces. */
    public String format(Locale locale) {
        return MoneyFormat.of(locale).format(this);
    }

    @Override
    public int compareTo(Money other) {
        return Long.compare(minor, same(other).minor);
    }

    @Override
    public String toString() {
        return decimal() + " " + currency;
    }

    private Money same(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(currency + " and " + other.currency);
        }
        return other;
    }
}
