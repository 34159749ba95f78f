package changeover.contracts.oldsheet;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.words.Folded;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a file calls machines and plans: their codes and names, and over them what a person said of other words. */
final class SheetWords {

    private final Map<String, String> kinds = new HashMap<>();
    private final Map<String, String> planCodes = new HashMap<>();
    private final Map<String, PlanFacts> plans = new HashMap<>();
    private final Set<String> ownKinds;
    private final Set<String> ownPlans;

    SheetWords(SheetReading reading, Catalogue catalogue, Collection<PlanFacts> known) {
        for (Kind kind : catalogue.kinds()) {
            kinds.put(Folded.of(kind.code()), kind.code());
            kinds.put(Folded.of(kind.wording().en()), kind.code());
            kinds.put(Folded.of(kind.wording().fr()), kind.code());
        }
        ownKinds = Set.copyOf(kinds.keySet());
        reading.kinds().forEach((word, code) -> {
            if (code.isEmpty() || catalogue.findKind(code).isPresent()) {
                kinds.put(word, code);
            }
        });
        for (PlanFacts plan : known) {
            plans.put(plan.code(), plan);
            planCodes.put(Folded.of(plan.code()), plan.code());
            planCodes.put(Folded.of(plan.name().en()), plan.code());
            planCodes.put(Folded.of(plan.name().fr()), plan.code());
        }
        ownPlans = Set.copyOf(planCodes.keySet());
        reading.plans().forEach((word, code) -> {
            if (code.isEmpty() || plans.containsKey(code)) {
                planCodes.put(word, code);
            }
        });
    }

    /** A code, empty for what is read at the first visit; nothing for a word that nobody named. */
    Optional<String> kind(String said) {
        return Optional.ofNullable(kinds.get(Folded.of(said)));
    }

    /** Whether the catalogue calls a kind so: nobody has to name it. */
    boolean isKind(String said) {
        return ownKinds.contains(Folded.of(said));
    }

    /** Whether a plan is called so. */
    boolean isPlan(String said) {
        return ownPlans.contains(Folded.of(said));
    }

    /** A code, empty for no agreement; nothing for a word that nobody named. */
    Optional<String> planCode(String said) {
        return Optional.ofNullable(planCodes.get(Folded.of(said)));
    }

    Optional<PlanFacts> plan(String code) {
        return Optional.ofNullable(plans.get(code));
    }
}
