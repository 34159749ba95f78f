package changeover.contracts.customers;

import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.words.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is written of a machine must be what its kind declares, each value one that may stand there. */
final class KindFacts {

    private KindFacts() {}

    /** Everything that the kind does not allow, empty when all is well. */
    static List<Refusal> refusals(Optional<Kind> known, Equipment.Facts facts) {
        Kind kind = known.orElse(null);
        if (kind == null) {
            return List.of(Refusal.of("equipment.kind-unknown").at("kind"));
        }
        var refusals = new ArrayList<Refusal>();
        check("fits", facts.fits(), kind.fits(), refusals);
        check("nameplate", facts.nameplate(), kind.nameplate(), refusals);
        return refusals;
    }

    private static void check(String field, Map<String, String> said, List<Fact> known, List<Refusal> refusals) {
        said.forEach((name, value) -> {
            Fact fact = known.stream()
                    .filter(one -> one.name().equals(name))
                    .findFirst()
                    .orElse(null);
            if (fact == null) {
                refusals.add(Refusal.of("equipment.fact-unknown", Map.of("name", name))
                        .at(field));
            } else if (!fact.allows(value)) {
                refusals.add(Refusal.of("equipment.fact-value", Map.of("name", fact.wording()))
                        .at(field + "." + name));
            }
        });
    }
}
