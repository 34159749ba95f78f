package changeover.contracts.catalogue;

import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Due.Act;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Intervals count from the last time done. Where nobody knows it, or it ran out before the term, the task is due from
 * the first day of the term and the count starts there.
 *
 * <p>Two windows of one task never share a day: one visit cannot keep both.
 */
final class MonthClock {

    private MonthClock() {}

    static List<Due> every(int months, int min, int max, Term term, History history) {
        List<Due> dues = new ArrayList<>();
        LocalDate free = term.from();
        LocalDate base = history.lastDone();
        if (base == null || base.plusMonths(max).isBefore(term.from())) {
            base = term.from();
            free = base.plusMonths(months);
            dues.add(Due.within(new Window(base, free), base));
        }
        for (long step = 1; base.plusMonths(step * months).isBefore(term.until()); step++) {
            Window window = Window.ofDays(
                    base.plusMonths((step - 1) * months + min), base.plusMonths((step - 1) * months + max));
            LocalDate target = base.plusMonths(step * months);
            window.since(free).ifPresent(left -> dues.add(Due.within(left, target)));
            free = window.until();
        }
        return List.copyOf(dues);
    }

    static List<Due> times(int times, Term term) {
        long months = term.months();
        long parts = Math.clamp(Math.round(times * months / 12.0), 1, term.days());
        List<Due> dues = new ArrayList<>();
        for (long part = 0; part < parts; part++) {
            Window window = new Window(
                    term.from().plusDays(term.days() * part / parts),
                    term.from().plusDays(term.days() * (part + 1) / parts));
            dues.add(Due.within(window, window.middle()));
        }
        return List.copyOf(dues);
    }

    static List<Due> checks(int check, int cap, Term term, History history) {
        List<Due> dues = new ArrayList<>();
        LocalDate base = history.lastDone();
        if (base == null || base.plusMonths(cap).isBefore(term.from())) {
            base = term.from();
            add(dues, base, Act.REPLACE, term);
        }
        for (long cycle = 0; base.plusMonths(cycle * cap).isBefore(term.until()); cycle++) {
            for (long month = check; month < cap; month += check) {
                add(dues, base.plusMonths(cycle * cap + month), Act.CHECK, term);
            }
            add(dues, base.plusMonths((cycle + 1) * cap), Act.REPLACE, term);
        }
        return List.copyOf(dues);
    }

    /** One look and one change in every round; an unknown or outlived last change begins with a change. */
    static List<Due> looks(int look, int change, Term term, History history) {
        List<Due> dues = new ArrayList<>();
        LocalDate base = history.lastDone();
        if (base == null || base.plusDays(change).isBefore(term.from())) {
            base = term.from();
            add(dues, base, Act.REPLACE, term);
        }
        for (LocalDate round = base; round.isBefore(term.until()); round = round.plusDays(change)) {
            if (look < change) {
                add(dues, round.plusDays(look), Act.CHECK, term);
            }
            add(dues, round.plusDays(change), Act.REPLACE, term);
        }
        return List.copyOf(dues);
    }

    private static void add(List<Due> dues, LocalDate day, Act act, Term term) {
        if (term.contains(day)) {
            dues.add(new Due(Window.ofDay(day), day, act));
        }
    }
}
