package changeover.billing.bank;

import java.math.BigDecimal;
import java.util.Optional;

/** An amount as banks write it: a sign before or after, or brackets for what went out; blanks, points or commas between thousands. */
final class BankAmount {

    private BankAmount() {}

    /** Empty for what is no amount; nought for an empty cell. */
    static Optional<BigDecimal> read(String cell, boolean decimalComma) {
        String bare = cell.replaceAll("[\\s\u00a0\u202f$€£]|[A-Z]{3}", "").replace('\u2212', '-');
        if (bare.isEmpty()) {
            return Optional.of(BigDecimal.ZERO);
        }
        boolean out = bare.startsWith("(") && bare.endsWith(")") || bare.endsWith("-") || bare.startsWith("-");
        String digits = bare.replaceAll("^[-+(]|[-+)]$", "");
        String plain = decimalComma
                ? digits.replace(".", "").replace("'", "").replace(',', '.')
                : digits.replace(",", "").replace("'", "");
        if (!plain.matches("\\d{1,12}(\\.\\d{1,4})?|\\.\\d{1,4}")) {
            return Optional.empty();
        }
        BigDecimal amount = new BigDecimal(plain);
        return Optional.of(out ? amount.negate() : amount);
    }
}
