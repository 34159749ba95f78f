package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import org.jspecify.annotations.Nullable;

/**
 * A kind of part the trade carries.
 *
 * @param unit UN/ECE Recommendation 20 code, {@code H87} piece
 * @param fits the fact of the equipment that says which one (a filter's {@code size}); null when any will do
 */
public record PartKind(
        String code, Wording wording, String unit, @Nullable String fits) {}
