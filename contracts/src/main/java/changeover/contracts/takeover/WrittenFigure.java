package changeover.contracts.takeover;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A figure as people write it in a list: {@code 1234.56}, {@code 1 234,56 $}, {@code 1,234.56}. A comma or a point before
 * three digits alone may mean either, so {@code 1,234} is not understood.
 */
public final class WrittenFigure {

    private static final Pattern PLAIN = Pattern.compile("\\d{1,9}([.,]\\d{1,4})?");
    private static final Pattern EITHER = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern ENGLISH = Pattern.compile("\\d{1,3}(,\\d{3})+\\.\\d{1,2}");
    private static final Pattern FRENCH = Pattern.compile("\\d{1,3}(\\.\\d{3})+,\\d{1,2}");

    private WrittenFigure() {}

    /** Empty for what is no figure, or may be two. */
    public static Optional<BigDecimal> read(String cell) {
        String bare = cell.replaceAll("[\\s\u00a0\u202f$]", "");
        if (PLAIN.matcher(bare).matches() && !EITHER.matcher(bare).matches()) {
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
}
