package changeover.billing.pricesfile;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * An amount as people write it in a table: {@code 1234.56}, {@code 1,234.56}, {@code 1 234,56 $}, {@code 1.234,56}. A comma or
 * a point followed by three digits alone may mean either, so {@code 1,234} is not understood; {@code 1234,5} is.
 */
final class WrittenAmount {

    private static final Pattern PLAIN = Pattern.compile("\\d{1,9}([.,]\\d{1,2})?");
    private static final Pattern ENGLISH = Pattern.compile("\\d{1,3}(,\\d{3})+\\.\\d{1,2}");
    private static final Pattern FRENCH = Pattern.compile("\\d{1,3}(\\.\\d{3})+,\\d{1,2}");

    /** A point and more decimals than any price has, or a comma that may part thousands. */
    private static final Pattern EITHER = Pattern.compile("\\d{1,3}([.,]\\d{3})+");

    private WrittenAmount() {}

    /** Empty for what is no amount, or may be two. */
    static Optional<BigDecimal> read(String cell) {
        String bare = bare(cell);
        if (PLAIN.matcher(bare).matches()) {
            return Optional.of(new BigDecimal(bare.replace(',', '.')));
        }
        if (ENGLISH.matcher(bare).matches()) {
            return Optional.of(new BigDecimal(bare.replace(",", "")));
        }
        if (FRENCH.matcher(bare).matches()) {
            return Optional.of(new BigDecimal(bare.replace(".", "").replace(',', '.')));
        }
        return Optional.empty();
    }

    /** It may mean thousands or thousandths. */
    static boolean isTwofold(String cell) {
        return EITHER.matcher(bare(cell)).matches();
    }

    private static String bare(String cell) {
        return cell.replaceAll("[\\s\u00a0\u202f$]", "");
    }
}
