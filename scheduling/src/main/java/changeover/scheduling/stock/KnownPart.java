package changeover.scheduling.stock;

import changeover.contracts.catalogue.PartSize;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
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

    /** Which one of its kind it is; empty when any will do. */
    public Optional<PartSize> which() {
        return Optional.ofNullable(size).filter(said -> !said.isBlank()).map(said -> PartSize.ofPart(said, name.en()));
    }

    /** Whether it goes into the machine: by any fact of its card that says a size. */
    public boolean goesInto(Map<String, String> fits) {
        return which().map(part -> fits.keySet().stream()
                        .flatMap(fact -> PartSize.ofMachine(fact, fits).stream())
                        .anyMatch(part::fits))
                .orElse(true);
    }

    /** So much of a part. */
    public record Amount(String partCode, BigDecimal quantity) {}
}
