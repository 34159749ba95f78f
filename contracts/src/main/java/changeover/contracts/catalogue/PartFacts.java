package changeover.contracts.catalogue;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which one of a kind of part goes into a machine, and how many of it, stands on the machine's card: under the name that the
 * kind of part goes by, or the one that the kind of machine has for it.
 */
final class PartFacts {

    private final Map<String, Set<String>> sizes = new HashMap<>();
    private final Map<String, Set<String>> counts = new HashMap<>();

    PartFacts(Collection<Kind> kinds) {
        for (Kind kind : kinds) {
            for (Fact fact : kind.fits()) {
                add(sizes, fact.part(), fact.name());
                add(counts, fact.counts(), fact.name());
            }
        }
    }

    private static void add(Map<String, Set<String>> facts, @Nullable String part, String name) {
        if (part != null) {
            facts.computeIfAbsent(part, _ -> new LinkedHashSet<>()).add(name);
        }
    }

    Optional<PartSize> size(PartKind part, Map<String, String> fits) {
        return PartSize.ofMachine(part.fits(), fits)
                .or(() -> sizes.getOrDefault(part.code(), Set.of()).stream()
                        .flatMap(fact -> PartSize.ofMachine(fact, fits).stream())
                        .findFirst());
    }

    /** One where the card says nothing, or no whole number from 1 to 99. */
    int count(String part, Map<String, String> fits) {
        return counts.getOrDefault(part, Set.of()).stream()
                .map(fact -> fits.getOrDefault(fact, "").strip())
                .filter(said -> said.matches("[1-9]\\d?"))
                .mapToInt(Integer::parseInt)
                .findFirst()
                .orElse(1);
    }
}
