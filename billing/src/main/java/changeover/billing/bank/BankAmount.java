package changeover.billing.bank;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * An amount as banks write it, whatever currency stands beside it: a sign before or after, or brackets for what went out; blanks, points or commas between
 * thousands, each before three digits, so that a decimal sign of the other kind is never taken for one.
 */
final class BankAmount {

    private static final int MOST_LETTERS = 20;
    private static final Pattern POINT =
            Pattern.compile("(\\d{1,12}|\\d{1,3}([,']\\d{3}){1,3})(\\.\\d{0,4})?|\\.\\d{1,4}");
    private static final Pattern COMMA = Pattern.compile("(\\d{1,12}|\\d{1,3}([.']\\d{3}){1,3})(,\\d{0,4})?|,\\d{1,4}");

    private static final Pattern CURRENCY = Pattern.compile("[$€£]|[A-Z]{3}");

    private BankAmount() {}

    /** The currency that is written beside the amount, when it is not this one (ISO 4217); the dollar's sign is any dollar's. */
    static Optional<String> foreign(String cell, String ours) {
        return CURRENCY.matcher(cell)
                .results()
                .map(MatchResult::group)
                .filter(said -> !switch (said) {
                    case "$" -> ours.endsWith("D");
                    case "€" -> ours.equals("EUR");
                    case "£" -> ours.equals("GBP");
                    default -> ours.equals(said);
                })
                .findFirst();
    }

    /** Empty for what is no amount; nought for an empty cell. */
    static Optional<BigDecimal> read(String cell, boolean decimalComma) {
        String bare = cell.replaceAll("[\\s\u00a0\u202f$€£]|[A-Z]{3}", "").replace('\u2212', '-');
        if (bare.isEmpty()) {
            return Optional.of(BigDecimal.ZERO);
        }
        boolean out = bare.startsWith("(") && bare.endsWith(")") || bare.endsWith("-") || bare.startsWith("-");
        String digits = bare.replaceAll("^[-+(]|[-+)]$", "");
        if (digits.length() > MOST_LETTERS
                || !(decimalComma ? COMMA : POINT).matcher(digits).matches()) {
            return Optional.empty();
        }
        String plain = decimalComma ? digits.replace(".", "").replace(',', '.') : digits.replace(",", "");
        BigDecimal amount = new BigDecimal(plain.replace("'", ""));
        return Optional.of(out ? amount.negate() : amount);
    }

    /** Whether the currency (ISO 4217) has no coin for it: a bank moves no half cents, so that the column is another one. */
    static boolean isInParts(BigDecimal amount, String currency) {
        return amount.stripTrailingZeros().scale()
                > Currency.getInstance(currency).getDefaultFractionDigits();
    }

    /** Whether it is larger than anything that is owed or paid here, in or out. */
    static boolean isTooMuch(BigDecimal amount) {
        return amount.abs().compareTo(Money.MOST) > 0;
    }
}
