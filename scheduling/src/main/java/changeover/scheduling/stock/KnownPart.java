package changeover.scheduling.stock;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A part that the business carries.
 *
 * @param unit UN/ECE Recommendation 20 code
 * @param kind the catalogue's kind of part ({@code filter}); null for a part of its own sort
 * @param size which one of its kind it is, as the equipment's fact says it ({@code 16x25x4}); null when any will do
 */
public record KnownPart(
        String code,
        Wording name,
        String unit,
        @Nullable String kind,
        @Nullable String size) {

    /** So much of a part. */
    public record Amount(String partCode, BigDecimal quantity) {}
}
