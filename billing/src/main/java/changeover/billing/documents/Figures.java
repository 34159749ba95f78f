package changeover.billing.documents;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;

/**
 * How figures are printed: {@code 31 mars 2027}, {@code 8 h 04}, {@code 1 234,56} in the French of Quebec, {@code 31
 * March 2027}, {@code 8:04}, {@code 1,234.56} in English.
 */
record Figures(Words words) {

    private static final String NBSP = "\u00a0";

    String day(LocalDate day) {
        String number = words.isFrench() && day.getDayOfMonth() == 1 ? "1er" : String.valueOf(day.getDayOfMonth());
        return number + NBSP + words.say("month." + day.getMonthValue()) + NBSP + day.getYear();
    }

    String shortDay(LocalDate day) {
        return day.getDayOfMonth() + NBSP + month(day.getMonthValue());
    }

    String month(int month) {
        return words.say("month.short." + month);
    }

    String time(LocalTime time) {
        String minutes = (time.getMinute() < 10 ? "0" : "") + time.getMinute();
        if (!words.isFrench()) {
            return time.getHour() + ":" + minutes;
        }
        return time.getHour() + NBSP + "h" + (time.getMinute() == 0 ? "" : NBSP + minutes);
    }

    /** With the sign of the currency, for totals. */
    String money(Money money) {
        return money.format(words.language()).replaceFirst("^-", "\u2013");
    }

    /** Without the sign, for a column of amounts. */
    String amount(Money money) {
        String plain = grouped(money.amount().abs().toPlainString());
        return money.isNegative() ? "\u2013" + plain : plain;
    }

    /** As it was given, without trailing noughts, grouped from five digits on. */
    String number(BigDecimal number) {
        BigDecimal bare = number.stripTrailingZeros();
        String plain = (bare.scale() < 0 ? bare.setScale(0) : bare).abs().toPlainString();
        String shown = plain.length() > 4 && plain.indexOf('.') != 4 ? grouped(plain) : plain.replace('.', point());
        return number.signum() < 0 ? "\u2013" + shown : shown;
    }

    String percent(BigDecimal percent) {
        return number(percent) + (words.isFrench() ? NBSP + "%" : "%");
    }

    private char point() {
        return words.isFrench() ? ',' : '.';
    }

    private String grouped(String plain) {
        int dot = plain.indexOf('.');
        int whole = dot < 0 ? plain.length() : dot;
        StringBuilder shown = new StringBuilder(plain.length() + 4);
        for (int at = 0; at < plain.length(); at++) {
            if (at > 0 && at < whole && (whole - at) % 3 == 0) {
                shown.append(words.isFrench() ? NBSP : ",");
            }
            shown.append(at == dot ? point() : plain.charAt(at));
        }
        return shown.toString();
    }
}
