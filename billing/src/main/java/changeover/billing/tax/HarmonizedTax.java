package changeover.billing.tax;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.RegionNames;
import changeover.contracts.words.Wording;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A harmonized tax is the federal and the provincial one together (Excise Tax Act, s. 165(2), from memory): where it holds neither
 * is charged beside it, and where an owner adds it the place's two fall away.
 */
final class HarmonizedTax {

    static final String CODE = "hst";
    static final Set<String> PARTS = Set.of("gst", "pst", "qst");

    private HarmonizedTax() {}

    /** @throws changeover.contracts.words.Refused when the row would charge one of the two taxes twice */
    static void judge(TaxRow added, TaxTable table) {
        refusal(added, table).ifPresent(refusal -> {
            throw refusal.thrown();
        });
    }

    /** Why a row may not be added; empty when it may. */
    static Optional<Refusal> refusal(TaxRow added, TaxTable table) {
        Map<String, Wording> place = Map.of("region", RegionNames.of(added.tax().region()));
        if (PARTS.contains(added.tax().code())) {
            boolean harmonized = Stream.concat(table.own().stream(), table.shipped().stream())
                    .anyMatch(row -> row.tax().code().equals(CODE) && row.meets(added));
            return harmonized
                    ? Optional.of(Refusal.of("tax.harmonized-there", place).at("code"))
                    : Optional.empty();
        }
        boolean parts = added.tax().code().equals(CODE)
                && table.own().stream().anyMatch(row -> PARTS.contains(row.tax().code()) && row.meets(added));
        return parts ? Optional.of(Refusal.of("tax.parts-there", place).at("code")) : Optional.empty();
    }
}
