package changeover.scheduling.visits;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.NamedInLists;
import changeover.contracts.takeover.Brought;
import changeover.contracts.takeover.BroughtFile;
import changeover.contracts.takeover.BroughtList;
import changeover.contracts.takeover.Title;
import changeover.contracts.words.Folded;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** When each task was last done, as a file: a row for a machine and a task, its day or that it is to be read at the first visit. */
@ApplicationScoped
class LastTimesList implements BroughtList {

    private static final String HOME = "home";
    private static final String UNIT = "unit";
    private static final String TASK = "task";
    private static final String DAY = "day";

    private static final Set<String> TO_BE_READ = Set.of("", "to be read", "read", "unknown", "a relever", "inconnu");
    private static final Wording READ = new Wording("to be read at the first visit", "à relever à la première visite");

    @Inject
    NamedInLists named;

    @Inject
    OwnCatalogue trade;

    @Inject
    LastTimes times;

    /** A row whose home is known. */
    private record Found(BroughtFile.Row row, UUID home) {}

    @Override
    public String code() {
        return "last-times";
    }

    @Override
    public List<Title> titles() {
        return List.of(
                Title.needed(HOME, "maison"),
                Title.needed(UNIT, "appareil"),
                Title.needed(TASK, "tâche"),
                Title.needed(DAY, "jour"));
    }

    @Override
    public int turn() {
        return 20;
    }

    @Override
    public Brought bring(BroughtFile file, LocalDate day) {
        var notes = new Brought.Notes();
        List<Found> found = found(file, notes);
        List<UUID> homes = found.stream().map(Found::home).distinct().toList();
        Map<UUID, List<Equipment>> machines = named.machines(homes);
        Map<LastTimes.Of, LastTimes.Known> known = homes.isEmpty() ? Map.of() : times.known(homes);
        Catalogue catalogue = trade.catalogue();
        Map<LastTimes.Of, LastTimes.Told> told = new LinkedHashMap<>();
        Map<LastTimes.Of, Integer> rows = new HashMap<>();
        for (Found one : found) {
            try {
                Equipment machine = machine(machines.getOrDefault(one.home(), List.of()), one.row());
                Task task = task(machine, one.row(), catalogue);
                @Nullable LocalDate last = day(one.row(), day);
                var of = new LastTimes.Of(machine.id(), task.code());
                Integer before = rows.putIfAbsent(of, one.row().number());
                if (before != null) {
                    throw Refusal.of("brought.twice", Map.of("row", before))
                            .at(TASK)
                            .thrown();
                }
                note(
                        one.row(),
                        machine,
                        task,
                        last,
                        known.getOrDefault(of, LastTimes.Known.NOTHING),
                        notes,
                        () -> told.put(of, new LastTimes.Told(one.home(), machine.id(), task.code(), last)));
            } catch (Refused refused) {
                notes.fault(one.row().number(), refused);
            }
        }
        times.tell(List.copyOf(told.values()));
        return notes.done();
    }

    private List<Found> found(BroughtFile file, Brought.Notes notes) {
        NamedInLists.Names homes = named.homes();
        List<Found> found = new ArrayList<>();
        for (BroughtFile.Row row : file.rows()) {
            try {
                found.add(new Found(row, homes.find(row, HOME)));
            } catch (Refused refused) {
                notes.fault(row.number(), refused);
            }
        }
        return found;
    }

    private static void note(
            BroughtFile.Row row,
            Equipment machine,
            Task task,
            @Nullable LocalDate last,
            LastTimes.Known before,
            Brought.Notes notes,
            Runnable tell) {
        boolean same = last == null ? before.unread() || before.day() != null : last.equals(before.day());
        if (same) {
            notes.same();
            return;
        }
        Wording what = new Wording(
                row.cell(HOME) + ", " + machine.name() + ": " + task.wording().en(),
                row.cell(HOME) + ", " + machine.name() + "\u00a0: "
                        + task.wording().fr());
        notes.change(row.number(), what, said(before), last == null ? READ : DayInWords.of(last));
        tell.run();
    }

    private static Wording said(LastTimes.Known known) {
        LocalDate day = known.day();
        return day != null ? DayInWords.of(day) : known.unread() ? READ : Brought.NOTHING;
    }

    private static Equipment machine(List<Equipment> machines, BroughtFile.Row row) {
        String said = Folded.of(row.cell(UNIT));
        List<Equipment> called = machines.stream()
                .filter(one -> Folded.of(one.name()).equals(said)
                        || Folded.of(one.kind()).equals(said))
                .toList();
        if (called.size() != 1) {
            throw Refusal.of(
                            called.isEmpty() ? "brought.unit-unknown" : "brought.units-several",
                            Map.of("said", row.cell(UNIT)))
                    .at(UNIT)
                    .thrown();
        }
        return called.getFirst();
    }

    private static Task task(Equipment machine, BroughtFile.Row row, Catalogue catalogue) {
        String said = row.cell(TASK);
        String folded = Folded.of(said);
        return catalogue.tasksFor(machine.kind(), machine.fits()).stream()
                .filter(task -> task.code().equals(said)
                        || Stream.of(task.wording().en(), task.wording().fr())
                                .anyMatch(words -> Folded.of(words).equals(folded)))
                .findFirst()
                .orElseThrow(() -> Refusal.of("brought.task-unknown", Map.of("said", said))
                        .at(TASK)
                        .thrown());
    }

    /** Null: to be read. */
    private static @Nullable LocalDate day(BroughtFile.Row row, LocalDate takeOver) {
        return TO_BE_READ.contains(Folded.of(row.cell(DAY))) ? null : row.dayUntil(DAY, takeOver);
    }
}
