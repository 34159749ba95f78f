package changeover.scheduling.visits;

import java.util.List;

/**
 * Which task went to which visit.
 *
 * @param toPins for each visit that has its day, what comes to it
 * @param made the new visits, each with its tasks
 * @param left what no visit takes
 */
record Packed(List<List<Owed>> toPins, List<List<Owed>> made, List<Owed> left, Proof proof) {

    Packed {
        toPins = List.copyOf(toPins);
        made = List.copyOf(made);
        left = List.copyOf(left);
    }

    /** Whether no visit is longer than it may be. */
    boolean isWithin(Packing asked) {
        for (int pin = 0; pin < toPins.size(); pin++) {
            List<Owed> more = toPins.get(pin);
            VisitDraft held = asked.pins().get(pin);
            if (!more.isEmpty()
                    && !asked.longest().holds(held.tasks().size() + more.size(), held.minutes() + minutes(more))) {
                return false;
            }
        }
        return made.stream().allMatch(tasks -> asked.longest().holds(tasks.size(), minutes(tasks)));
    }

    private static long minutes(List<Owed> tasks) {
        return tasks.stream().mapToLong(Owed::minutes).sum();
    }
}
