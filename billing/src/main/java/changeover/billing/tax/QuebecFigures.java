package changeover.billing.tax;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Quebec has two taxes, each on a line of its own: 5 and 9.975 percent of the price before tax. The two added up, or either sum with
 * its last figure cut off, is no rate there and stands on no paper.
 *
 * <p>Act respecting the Québec sales tax, s. 16; Revenu Québec, Basic rules for applying the GST/HST and QST.
 */
final class QuebecFigures {

    private static final String PLACE = "CA-QC";
    private static final List<BigDecimal> NO_RATES =
            List.of(new BigDecimal("9.97"), new BigDecimal("14.97"), new BigDecimal("14.975"));
    private static final Pattern IN_WORDS =
            Pattern.compile("(?<![0-9.,])(?:9[.,]970*|14[.,]9750*|14[.,]970*)(?![0-9])");

    private QuebecFigures() {}

    /** @param region as typed */
    static boolean noRate(String region, BigDecimal percent) {
        return there(region) && NO_RATES.stream().anyMatch(one -> one.compareTo(percent) == 0);
    }

    /** @param label as printed */
    static boolean namesNoRate(String region, Wording label) {
        return there(region)
                && (IN_WORDS.matcher(label.en()).find()
                        || IN_WORDS.matcher(label.fr()).find());
    }

    private static boolean there(String region) {
        return region.strip().toUpperCase(Locale.ROOT).equals(PLACE);
    }
}
