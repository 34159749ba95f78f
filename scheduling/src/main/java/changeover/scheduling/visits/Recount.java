package changeover.scheduling.visits;

import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.ShutTimes;
import changeover.scheduling.visits.StandingVisit.StandingTask;
import changeover.scheduling.visits.YearToPlan.UnitTask;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A task done early or late shifts what is still owed of it where its cadence counts from the last time done; what belongs
 * to a season or a part of the year stays there. A visit that has its day keeps what it holds, and the next time counts
 * from that day.
 *
 * @param standing the visits, without the lines that are counted anew
 * @param owed what is owed instead, in the order of the tasks and their days
 * @param rows the lines that go on, by what each says from now on: the promise itself, not its like
 * @param gone lines that are no longer owed
 * @param tasks that were counted anew
 * @param visits that held them
 */
record Recount(
        List<StandingVisit> standing,
        List<Promise> owed,
        Map<Promise, UUID> rows,
        List<UUID> gone,
        Set<UnitTask> tasks,
        Set<UUID> visits) {

    Recount {
        standing = List.copyOf(standing);
        owed = List.copyOf(owed);
        rows = Collections.unmodifiableMap(rows);
        gone = List.copyOf(gone);
        tasks = Set.copyOf(tasks);
        visits = Set.copyOf(visits);
    }

    /** Whether anything is owed on other days than it stood. */
    boolean changesNothing() {
        return tasks.isEmpty();
    }

    /**
     * Why a task is counted anew.
     *
     * @param undone whether it was only said to be done, and that was taken back
     * @param due the first day of the window that its line stood for there, where it was a promise
     */
    record Why(boolean undone, @Nullable LocalDate due) {

        static final Why DONE = new Why(false, null);

        /** A promise that was taken up at its visit is not owed twice, done there or not; what is past stays as it stands. */
        boolean owes(Window window, LocalDate today) {
            return !undone
                    || (today.isBefore(window.until())
                            && (due == null || window.from().isAfter(due)));
        }
    }

    /**
     * @param counted tasks that are counted anew, in their order, each with its last day
     * @param unkept by task, the windows to come that no visit keeps
     * @param shut when the home is; windows that were laid out before that was known stay
     * @param today what would have been due before it stays as it stands
     */
    static Recount of(
            Term term,
            List<StandingVisit> standing,
            Map<PromisedTask, Why> counted,
            Map<UnitTask, List<Window>> unkept,
            ShutTimes shut,
            SeasonRules rules,
            LocalDate today) {
        List<Promise> owed = new ArrayList<>();
        Map<Promise, UUID> rows = new IdentityHashMap<>();
        List<UUID> taken = new ArrayList<>();
        Set<UnitTask> tasks = new HashSet<>();
        for (var each : counted.entrySet()) {
            PromisedTask task = each.getKey();
            Why why = each.getValue();
            LocalDate last = task.history().lastDone();
            if (task.who() != Who.TECHNICIAN || !task.cadence().countsFromLastTime() || (last == null && !why.undone)) {
                continue;
            }
            UnitTask which = new UnitTask(task.equipmentId(), task.taskCode());
            List<StandingTask> open = open(standing, which, why, today);
            List<Promise> always = owed(term, task, countedFrom(standing, which, last, today), rules).stream()
                    .filter(promise -> why.owes(promise.window(), today))
                    .toList();
            List<Promise> now = OpenDays.of(always, shut);
            List<Window> before = windows(open, unkept.getOrDefault(which, List.of()));
            boolean asBefore = windows(now).equals(before) || windows(always).equals(before);
            boolean over = now.stream()
                    .anyMatch(promise -> !today.isBefore(promise.window().until()));
            if (!asBefore && !over) {
                tasks.add(which);
                owed.addAll(now);
                open.forEach(line -> taken.add(line.id()));
                for (int line = 0; line < Math.min(open.size(), now.size()); line++) {
                    rows.put(now.get(line), open.get(line).id());
                }
            }
        }
        List<UUID> gone = new ArrayList<>(taken);
        gone.removeAll(rows.values());
        Set<UUID> visits = standing.stream()
                .filter(visit -> visit.tasks().stream().anyMatch(line -> taken.contains(line.id())))
                .map(StandingVisit::id)
                .collect(Collectors.toUnmodifiableSet());
        return new Recount(without(standing, taken), owed, rows, gone, tasks, visits);
    }

    /** Lines of visits that have no day and have not begun, in the order of their days. */
    private static List<StandingTask> open(List<StandingVisit> standing, UnitTask which, Why why, LocalDate today) {
        return standing.stream()
                .filter(visit -> !visit.begun() && visit.day() == null)
                .flatMap(visit -> lines(visit, which))
                .filter(line ->
                        !why.undone || today.isBefore(line.promise().window().until()))
                .sorted(Comparator.comparing(
                                (StandingTask line) -> line.promise().window())
                        .thenComparing(StandingTask::id))
                .toList();
    }

    /** The last time done, or a later day that a visit has for it, be it with a partner; null where there is neither. */
    private static @Nullable LocalDate countedFrom(
            List<StandingVisit> standing, UnitTask which, @Nullable LocalDate last, LocalDate today) {
        return standing.stream()
                .filter(visit -> lines(visit, which).findAny().isPresent())
                .flatMap(visit -> Stream.ofNullable(visit.day()).filter(day -> !visit.begun() || day.isAfter(today)))
                .filter(day -> last == null || last.isBefore(day))
                .max(Comparator.naturalOrder())
                .orElse(last);
    }

    /** A reading that was put off has joined its visit for the weather's sake and stays there. */
    private static Stream<StandingTask> lines(StandingVisit visit, UnitTask which) {
        return visit.tasks().stream()
                .filter(line -> !line.putOff()
                        && line.promise().equipmentId().equals(which.unit())
                        && line.promise().taskCode().equals(which.task()));
    }

    private static List<Promise> owed(Term term, PromisedTask task, @Nullable LocalDate last, SeasonRules rules) {
        if (last == null) {
            return Promises.in(term, List.of(task), rules);
        }
        LocalDate from = last.isAfter(term.from()) ? last : term.from();
        PromisedTask counted = new PromisedTask(
                task.equipmentId(),
                task.taskCode(),
                task.who(),
                task.minutes(),
                task.cadence(),
                task.warmOnly(),
                History.doneOn(last));
        return from.isBefore(term.until())
                ? Promises.in(new Term(from, term.until()), List.of(counted), rules)
                : List.of();
    }

    private static List<Window> windows(List<Promise> promises) {
        return promises.stream().map(Promise::window).sorted().toList();
    }

    private static List<Window> windows(List<StandingTask> open, List<Window> unkept) {
        return Stream.concat(open.stream().map(line -> line.promise().window()), unkept.stream())
                .sorted()
                .toList();
    }

    private static List<StandingVisit> without(List<StandingVisit> standing, List<UUID> lines) {
        return lines.isEmpty()
                ? standing
                : standing.stream()
                        .map(visit -> new StandingVisit(
                                visit.id(),
                                visit.window(),
                                visit.day(),
                                visit.begun(),
                                visit.tasks().stream()
                                        .filter(line -> !lines.contains(line.id()))
                                        .toList()))
                        .toList();
    }
}
