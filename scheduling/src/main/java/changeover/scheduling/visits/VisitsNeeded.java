package changeover.scheduling.visits;

import changeover.contracts.catalogue.LongestVisit;
import java.util.List;

/**
 * The visits that keep all of a year's promises.
 *
 * @param proof whether they are known to be the fewest
 */
public record VisitsNeeded(int visits, Proof proof) {

    public static VisitsNeeded of(List<Promise> promises, LongestVisit longest) {
        List<Owed> tasks = Owed.byTechnicians(promises);
        Packed packed = new Packing(tasks, List.of(), tasks.size(), longest).packed();
        return new VisitsNeeded(packed.made().size(), packed.proof());
    }
}
