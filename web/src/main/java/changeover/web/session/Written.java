package changeover.web.session;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.util.Locale;

/** A figure as it stands in a form's field, to be typed over: with the decimal sign of the reader, nothing between thousands. */
public final class Written {

    private Written() {}

    /** {@code 1234.50} in English, {@code 1234,50} in French; both are understood when they come back. */
    public static String of(Money amount, Locale locale) {
        return of(amount.decimal(), locale);
    }

    /** Without noughts at the end. */
    public static String of(BigDecimal figure, Locale locale) {
        return of(figure.stripTrailingZeros().toPlainString(), locale);
    }

    /** With the noughts it was written with. */
    public static String whole(BigDecimal figure, Locale locale) {
        return of(figure.toPlainString(), locale);
    }

    private static String of(String decimal, Locale locale) {
        return locale.getLanguage().equals("fr") ? decimal.replace('.', ',') : decimal;
    }
}
