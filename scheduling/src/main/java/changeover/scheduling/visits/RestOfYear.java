package changeover.scheduling.visits;

import changeover.contracts.agreements.AgreementsTakenOver;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.ShutTimes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A year that began elsewhere is planned from the day it was taken over: what was due before is nobody's fault here, what
 * the last visit did is not done again, and no more visits are laid out than are left of those that were sold.
 *
 * <p>A visit did what belonged to the season or the part of the year in which it was made, and what is done once a year
 * or oftener; of what is done less often nobody knows, so it is still owed.
 *
 * @param done what the last visit is taken to have done
 */
record RestOfYear(VisitPlan plan, List<PromisedTask> done) {

    private static final int ONCE_A_YEAR = 12;
    private static final int HALF_A_YEAR = 6;

    RestOfYear {
        done = List.copyOf(done);
    }

    /** The same, its machines under their names inside the plan. */
    static RestOfYear of(YearToPlan year, AgreementsTakenOver.TakenOver known, OwnCatalogue.Own own, LocalDate day) {
        Map<UUID, UUID> standIns = PlannedYear.standIns(year);
        return of(
                year.term(),
                year.visits(),
                year.tasks().stream()
                        .map(task -> task.on(Objects.requireNonNull(standIns.get(task.equipmentId()))))
                        .toList(),
                known.visitsDone(),
                known.lastVisit(),
                year.shut(),
                own.seasons(),
                own.longestVisit(),
                day);
    }

    /**
     * @param sold visits that the plan sells for the whole term
     * @param visitsDone of them; null when nobody knows, then as few are laid out as keep what is owed
     * @param lastVisit null when nobody knows
     * @param shut when the home is
     * @param day of the take-over, before the term's end
     */
    static RestOfYear of(
            Term term,
            int sold,
            List<PromisedTask> tasks,
            @Nullable Integer visitsDone,
            @Nullable LocalDate lastVisit,
            ShutTimes shut,
            SeasonRules rules,
            LongestVisit longest,
            LocalDate day) {
        List<PromisedTask> done = new ArrayList<>();
        List<Promise> ahead = new ArrayList<>();
        for (PromisedTask task : tasks) {
            Optional<Window> given = lastVisit == null ? Optional.empty() : given(task, term, rules, lastVisit);
            given.ifPresent(_ -> done.add(task));
            LocalDate from = owedFrom(task, given, term, rules, day);
            if (from.isBefore(term.until())) {
                PromisedTask known = given.isPresent() ? lastDone(task, lastVisit) : task;
                ahead.addAll(PromisesLeft.of(term, List.of(known), rules, from).ahead());
            }
        }
        Term rest = PromisesLeft.rest(term, day);
        int visits = visits(term, rest, sold, tasks, visitsDone, OpenDays.of(ahead, shut), longest);
        return new RestOfYear(VisitPlan.of(ahead, shut, visits, rest, rules, longest), done);
    }

    /** A part of the year in which it was done is over for it. */
    static LocalDate owedFrom(PromisedTask task, Optional<Window> given, Term term, SeasonRules rules, LocalDate day) {
        LocalDate last = task.history().lastDone();
        if (!(task.cadence() instanceof Cadence.TimesAYear)) {
            return day;
        }
        return given.or(() -> last == null ? Optional.empty() : windowAt(task, term, rules, last))
                .map(Window::until)
                .filter(day::isBefore)
                .orElse(day);
    }

    /** The season, or the part of the year, that the last visit gave; for what is counted in months the day itself. */
    private static Optional<Window> given(PromisedTask task, Term term, SeasonRules rules, LocalDate lastVisit) {
        if (task.who() != Who.TECHNICIAN) {
            return Optional.empty();
        }
        return switch (task.cadence()) {
            case Cadence.EveryMonths every ->
                every.months() <= ONCE_A_YEAR ? Optional.of(Window.ofDay(lastVisit)) : Optional.empty();
            case Cadence.CheckThenReplace _, Cadence.LookThenChange _, Cadence.OnRequest _ -> Optional.empty();
            case Cadence.TimesAYear _ -> windowAt(task, term, rules, lastVisit);
            case Cadence.BeforeSeason _, Cadence.EachSeason _ ->
                windowAt(
                        task,
                        new Term(lastVisit.minusMonths(HALF_A_YEAR), lastVisit.plusMonths(HALF_A_YEAR)),
                        rules,
                        lastVisit);
        };
    }

    private static Optional<Window> windowAt(PromisedTask task, Term term, SeasonRules rules, LocalDate day) {
        return task.cadence().windowsIn(term, History.NONE, rules).stream()
                .filter(window -> window.contains(day))
                .findFirst();
    }

    private static PromisedTask lastDone(PromisedTask task, @Nullable LocalDate day) {
        LocalDate known = task.history().lastDone();
        LocalDate last = known == null || day != null && day.isAfter(known) ? day : known;
        return new PromisedTask(
                task.equipmentId(),
                task.taskCode(),
                task.who(),
                task.minutes(),
                task.cadence(),
                task.warmOnly(),
                new History(last, task.history().promised()));
    }

    private static int visits(
            Term term,
            Term rest,
            int sold,
            List<PromisedTask> tasks,
            @Nullable Integer visitsDone,
            List<Promise> ahead,
            LongestVisit longest) {
        if (visitsDone != null) {
            return Math.max(0, sold - visitsDone);
        }
        if (tasks.isEmpty()) {
            return (int) Math.ceilDiv(sold * rest.days(), term.days());
        }
        return Math.min(sold, VisitsNeeded.of(ahead, longest).visits());
    }
}
