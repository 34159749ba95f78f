package changeover.scheduling.visits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Of few tasks every way of putting them into visits: as much as can be is kept, in as few new visits as can be, as much
 * of it as can be at visits that have their day. A set of tasks is a number, each task a bit of it.
 */
final class PackedExactly {

    /** So many tasks take three to their power steps: five million. */
    static final int TASKS = 14;

    private static final int NEVER = TASKS + 1;

    private final Packing asked;
    private final TaskSets sets;

    /** For each set the fewest new visits that do it, and the first of them. */
    private final byte[] visits;

    private final int[] firstVisit;

    /** For each visit with a day, and each set that those up to it can do, what the last of them does; or -1. */
    private final List<int[]> atPins = new ArrayList<>();

    private PackedExactly(Packing asked) {
        this.asked = asked;
        this.sets = new TaskSets(asked.tasks(), asked.longest());
        this.visits = new byte[sets.size()];
        this.firstVisit = new int[sets.size()];
    }

    static Packed of(Packing asked) {
        return new PackedExactly(asked).packed();
    }

    private Packed packed() {
        countVisits();
        asked.pins().forEach(this::fill);
        int[] kept = kept();
        int all = sets.size() - 1;
        int bestPins = 0;
        long best = Long.MIN_VALUE;
        for (int pins = 0; pins <= all; pins++) {
            if (isDoneAtPins(pins)) {
                int made = kept[all ^ pins];
                long worth = 10_000L * (Integer.bitCount(pins) + Integer.bitCount(made))
                        - 100L * visits[made]
                        + Integer.bitCount(pins);
                if (worth > best) {
                    best = worth;
                    bestPins = pins;
                }
            }
        }
        int made = kept[all ^ bestPins];
        return new Packed(toPins(bestPins), made(made), sets.tasks(all ^ bestPins ^ made), Proof.FEWEST);
    }

    /** The first task of a set is at some visit; what that one leaves was counted before. */
    private void countVisits() {
        Arrays.fill(visits, (byte) NEVER);
        visits[0] = 0;
        for (int set = 1; set < sets.size(); set++) {
            int first = set & -set;
            int beside = set & sets.meeting(first);
            for (int others = beside; ; others = (others - 1) & beside) {
                int left = set ^ first ^ others;
                if (visits[left] + 1 < visits[set] && sets.isOneVisit(first | others)) {
                    visits[set] = (byte) (visits[left] + 1);
                    firstVisit[set] = first | others;
                }
                if (others == 0) {
                    break;
                }
            }
        }
    }

    /** What can be done with one more visit that has its day. */
    private void fill(VisitDraft pin) {
        int[] before = atPins.isEmpty() ? onlyNothing() : atPins.getLast();
        int[] after = new int[sets.size()];
        int onItsDay = sets.goingTo(pin);
        for (int set = 0; set < sets.size(); set++) {
            after[set] = -1;
            int some = set & onItsDay;
            for (int here = some; after[set] < 0; here = (here - 1) & some) {
                if (before[set ^ here] >= 0 && sets.goesTo(pin, here)) {
                    after[set] = here;
                }
                if (here == 0) {
                    break;
                }
            }
        }
        atPins.add(after);
    }

    private int[] onlyNothing() {
        int[] nothing = new int[sets.size()];
        Arrays.fill(nothing, -1);
        nothing[0] = 0;
        return nothing;
    }

    private boolean isDoneAtPins(int set) {
        return atPins.isEmpty() ? set == 0 : atPins.getLast()[set] >= 0;
    }

    /** For each set the largest part of it that so many new visits do; what closes last is left out first. */
    private int[] kept() {
        int[] kept = new int[sets.size()];
        for (int set = 1; set < sets.size(); set++) {
            kept[set] = visits[set] <= asked.atMost() ? set : 0;
            for (int bit = Integer.highestOneBit(set); kept[set] != set && bit > 0; bit >>= 1) {
                if ((set & bit) != 0 && Integer.bitCount(kept[set ^ bit]) > Integer.bitCount(kept[set])) {
                    kept[set] = kept[set ^ bit];
                }
            }
        }
        return kept;
    }

    private List<List<Owed>> toPins(int set) {
        List<List<Owed>> toPins = new ArrayList<>();
        int left = set;
        for (int[] at : atPins.reversed()) {
            toPins.addFirst(sets.tasks(at[left]));
            left ^= at[left];
        }
        return toPins;
    }

    private List<List<Owed>> made(int set) {
        List<List<Owed>> made = new ArrayList<>();
        for (int left = set; left != 0; left ^= firstVisit[left]) {
            made.add(sets.tasks(firstVisit[left]));
        }
        return made;
    }
}
