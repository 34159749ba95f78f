package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Visits filled one by one: each goes on the last day of what closes first, takes that, and fills up with what may be
 * done on that day. It is tried from both ends of the year and with the most urgent, the longest and the fullest first;
 * the fewest visits count, and a bound from below says how good they are.
 */
final class PackedQuickly {

    private static final Comparator<Owed> CLOSING = Comparator.comparing(Owed::window);
    private static final Comparator<Owed> OPENING =
            Comparator.comparing((Owed task) -> task.window().from()).reversed();
    private static final Comparator<Owed> LONGEST =
            Comparator.comparingInt(Owed::minutes).reversed();
    private static final Comparator<Owed> SHORTEST = Comparator.comparingInt(Owed::minutes);

    /**
     * One way of filling.
     *
     * @param backwards from the end of the year: on the first day of what opens last
     */
    private record Way(boolean backwards, Comparator<Owed> filling) {

        Comparator<Owed> urgency() {
            return backwards ? OPENING : CLOSING;
        }

        LocalDate day(Window window) {
            return backwards ? window.from() : window.last();
        }
    }

    private static final List<Way> WAYS = List.of(
            new Way(false, CLOSING.thenComparing(LONGEST)),
            new Way(true, OPENING.thenComparing(LONGEST)),
            new Way(false, LONGEST.thenComparing(CLOSING)),
            new Way(true, LONGEST.thenComparing(OPENING)),
            new Way(false, SHORTEST.thenComparing(CLOSING)));

    private final Packing asked;

    private PackedQuickly(Packing asked) {
        this.asked = asked;
    }

    static Packed of(Packing asked) {
        return new PackedQuickly(asked).packed();
    }

    private Packed packed() {
        long atLeast = VisitsAtLeast.of(asked);
        Packed best = null;
        for (Way way : WAYS) {
            Packed packed = all(way);
            if (best == null || packed.made().size() < best.made().size()) {
                best = packed;
            }
            if (best.made().size() <= atLeast) {
                break;
            }
        }
        if (best == null || best.made().size() > asked.atMost()) {
            return most();
        }
        long more = best.made().size() - atLeast;
        return new Packed(
                best.toPins(),
                best.made(),
                best.left(),
                more <= 0 ? Proof.FEWEST : more == 1 ? Proof.WITHIN_ONE : Proof.NOT_PROVEN);
    }

    /** Every task, in as many visits as it takes. */
    private Packed all(Way way) {
        List<Owed> open = new ArrayList<>(asked.tasks());
        open.sort(way.filling);
        List<List<Owed>> toPins = toPins(open);
        List<List<Owed>> made = new ArrayList<>();
        while (!open.isEmpty()) {
            Owed first = open.stream().min(way.urgency()).orElseThrow();
            made.add(filled(first, way.day(first.window()), open));
        }
        return new Packed(toPins, made, List.of(), Proof.NOT_PROVEN);
    }

    /** So many visits only: each time the day on which one visit keeps most. */
    private Packed most() {
        List<Owed> open = new ArrayList<>(asked.tasks());
        open.sort(SHORTEST.thenComparing(CLOSING));
        List<List<Owed>> toPins = toPins(open);
        List<List<Owed>> made = new ArrayList<>();
        while (made.size() < asked.atMost() && !open.isEmpty()) {
            List<Owed> best = List.of();
            for (LocalDate day : open.stream()
                    .map(task -> task.window().last())
                    .distinct()
                    .sorted()
                    .toList()) {
                List<Owed> kept = filling(day, open, VisitDraft.in(ExtraVisits.ALWAYS, asked.longest()));
                best = kept.size() > best.size() ? kept : best;
            }
            made.add(best);
            open.removeAll(best);
        }
        open.sort(Owed.BY_DEADLINE);
        return new Packed(toPins, made, open, Proof.NOT_PROVEN);
    }

    /** Takes out of what is open what the visits with a day have room for. */
    private List<List<Owed>> toPins(List<Owed> open) {
        List<List<Owed>> toPins = new ArrayList<>();
        for (VisitDraft pin : asked.pins()) {
            List<Owed> taken = filling(pin.window().from(), open, pin.copy());
            open.removeAll(taken);
            toPins.add(taken);
        }
        return toPins;
    }

    private List<Owed> filled(Owed first, LocalDate day, List<Owed> open) {
        VisitDraft visit = VisitDraft.in(ExtraVisits.ALWAYS, asked.longest());
        visit.add(first);
        open.remove(first);
        List<Owed> taken = filling(day, open, visit);
        open.removeAll(taken);
        taken.addFirst(first);
        return taken;
    }

    /** What of the open tasks still goes into a visit on a day, in their order. */
    private static List<Owed> filling(LocalDate day, List<Owed> open, VisitDraft visit) {
        List<Owed> taken = new ArrayList<>();
        for (Owed task : open) {
            if (task.window().contains(day) && visit.canTake(task)) {
                visit.add(task);
                taken.add(task);
            }
        }
        return taken;
    }
}
