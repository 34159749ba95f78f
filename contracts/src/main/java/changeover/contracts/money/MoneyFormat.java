package changeover.contracts.money;

import java.util.Currency;
import java.util.Locale;
import java.util.Map;

/** How people in Canada write an amount: {@code $1,234.56} in English, {@code 1 234,56 $} in French. */
enum MoneyFormat {
    ENGLISH(",", ".") {
        @Override
        String withSymbol(String number, String symbol) {
            return symbol + number;
        }
    },
    FRENCH("\u00a0", ",") {
        @Override
        String withSymbol(String number, String symbol) {
            return number + "\u00a0" + symbol;
        }
    };

    private static final Map<String, String> ENGLISH_SYMBOLS = Map.of("CAD", "$", "USD", "US$", "EUR", "€", "GBP", "£");
    private static final Map<String, String> FRENCH_SYMBOLS =
            Map.of("CAD", "$", "USD", "$\u00a0US", "EUR", "€", "GBP", "£");

    private final String grouping;
    private final String point;

    MoneyFormat(String grouping, String point) {
        this.grouping = grouping;
        this.point = point;
    }

    static MoneyFormat of(Locale locale) {
        return locale.getLanguage().equals("fr") ? FRENCH : ENGLISH;
    }

    abstract String withSymbol(String number, String symbol);

    String format(Money money) {
        String plain = money.amount().abs().toPlainString();
        int decimals = plain.indexOf('.');
        String whole = decimals < 0 ? plain : plain.substring(0, decimals);
        String number = grouped(whole) + (decimals < 0 ? "" : point + plain.substring(decimals + 1));
        return (money.isNegative() ? "-" : "") + withSymbol(number, symbol(money.currency()));
    }

    private String grouped(String digits) {
        StringBuilder grouped = new StringBuilder(digits);
        for (int at = digits.length() - 3; at > 0; at -= 3) {
            grouped.insert(at, grouping);
        }
        return grouped.toString();
    }

    private String symbol(Currency currency) {
        String code = currency.getCurrencyCode();
        String symbol = (this == FRENCH ? FRENCH_SYMBOLS : ENGLISH_SYMBOLS).get(code);
        if (symbol != null) {
            return symbol;
        }
        return this == FRENCH ? code : code + "\u00a0";
    }
}
