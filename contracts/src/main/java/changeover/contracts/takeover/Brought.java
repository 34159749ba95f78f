package changeover.contracts.takeover;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a list changes here.
 *
 * @param unchanged rows that say what stands already
 */
public record Brought(List<Change> changes, int unchanged, List<Fault> faults) {

    public static final Wording NOTHING = new Wording("", "");

    /** @param before what stood there, nothing for what is new */
    public record Change(int row, Wording what, Wording before, Wording now) {}

    /** @param column as the list calls it */
    public record Fault(int row, String column, Refusal why) {}

    public Brought {
        changes = List.copyOf(changes);
        faults = List.copyOf(faults);
    }

    /** Gathers what a list says while its rows are read. */
    public static final class Notes {

        private final List<Change> changes = new ArrayList<>();
        private final List<Fault> faults = new ArrayList<>();
        private int unchanged;

        public void change(int row, Wording what, Wording before, Wording now) {
            changes.add(new Change(row, what, before, now));
        }

        public void change(int row, String what, String before, String now) {
            change(row, alike(what), alike(before), alike(now));
        }

        public void fault(int row, String column, Refusal why) {
            faults.add(new Fault(row, column, why));
        }

        /** The first of what a row was refused for, at its column. */
        public void fault(int row, Refused refused) {
            Refusal why = refused.refusals().getFirst();
            fault(row, why.field() == null ? "" : why.field(), why);
        }

        public void same() {
            unchanged++;
        }

        public Set<Integer> badRows() {
            return faults.stream().map(Fault::row).collect(Collectors.toSet());
        }

        public Brought done() {
            faults.sort(Comparator.comparingInt(Fault::row));
            return new Brought(changes, unchanged, faults);
        }
    }

    /** A name that both languages write alike. */
    public static Wording alike(String name) {
        return new Wording(name, name);
    }
}
