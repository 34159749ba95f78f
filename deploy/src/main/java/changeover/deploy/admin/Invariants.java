package changeover.deploy.admin;

import java.util.List;
import java.util.stream.Stream;

/** Every invariant, in the order of the house: its locks, what was promised, what happened, what is owed. */
final class Invariants {
    private Invariants() {}

    static List<Invariant> all() {
        return Stream.of(
                        HouseInvariants.ALL.stream(),
                        PromiseInvariants.ALL.stream(),
                        VisitInvariants.ALL.stream(),
                        PartInvariants.ALL.stream(),
                        StopInvariants.ALL.stream(),
                        ReviewInvariants.ALL.stream(),
                        OwedInvariants.ALL.stream(),
                        PaperInvariants.ALL.stream())
                .flatMap(invariants -> invariants)
                .toList();
    }
}
