package changeover.billing.tax;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * One tax as it stands on a document: its own line, its rate, and where the rate was read.
 *
 * @param code stable and lower-case: {@code gst, qst, hst}, or the business's own
 * @param label as printed, with the rate in it: {@code TPS/GST 5 %}
 * @param category of EN 16931 (UNCL5305): S standard or reduced, Z zero, E exempt, AE reverse charge, O out of scope…
 * @param percent of the price before any tax
 * @param region ISO 3166-2 of the place of the work
 * @param registration the number under which a tax of the business's own is collected; null for gst, qst and hst, whose
 *     numbers stand in the business's profile
 * @param read whether the source's text was read; false means from memory
 */
public record Tax(
        String code,
        Wording label,
        String category,
        BigDecimal percent,
        String region,
        @Nullable String registration,
        String source,
        boolean read) {

    /** Canada's own taxes are collected under a number; others say themselves whether they have one. */
    public static boolean isUnderANumber(String code) {
        return switch (code) {
            case "gst", "hst", "qst" -> true;
            default -> false;
        };
    }
}
