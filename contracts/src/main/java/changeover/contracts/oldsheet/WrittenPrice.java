package changeover.contracts.oldsheet;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** An amount of money as somebody once wrote it; 1,000 may be a thousand or one and is no amount until it is written otherwise. */
final class WrittenPrice {

    private static final Pattern SIGNS = Pattern.compile("(?i)\\$|\\bCAD\\b|\\bCA\\b|\\bUSD\\b|[\\s\\p{Z}]+");
    private static final Pattern PLAIN = Pattern.compile("\\d{1,7}([.,]\\d{1,2})?");
    private static final Pattern POINT_LAST = Pattern.compile("\\d{1,3}(,\\d{3})+\\.\\d{2}");
    private static final Pattern COMMA_LAST = Pattern.compile("\\d{1,3}(\\.\\d{3})+,\\d{2}");

    private WrittenPrice() {}

    static Optional<BigDecimal> read(String said) {
        String bare = SIGNS.matcher(said).replaceAll("");
        if (PLAIN.matcher(bare).matches()) {
            return Optional.of(new BigDecimal(bare.replace(',', '.')));
        }
        if (POINT_LAST.matcher(bare).matches()) {
            return Optional.of(new BigDecimal(bare.replace(",", "")));
        }
        if (COMMA_LAST.matcher(bare).matches()) {
            return Optional.of(new BigDecimal(bare.replace(".", "").replace(',', '.')));
        }
        return Optional.empty();
    }
}
