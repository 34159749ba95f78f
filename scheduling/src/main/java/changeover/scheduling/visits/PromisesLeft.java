package changeover.scheduling.visits;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a machine that comes into an agreement in mid-term is owed in the rest of it. Seasons and parts of the year that
 * are over by then are not kept this term and are named; what is counted in months counts from the day the machine came.
 *
 * @param ahead what may still be kept, no day of it before the machine came
 * @param passed what technicians can no longer keep
 */
record PromisesLeft(List<Promise> ahead, List<Unkept> passed) {

    private static final Wording TOO_LATE = new Wording(
            "Due by %s; the machine came into the agreement on %s only.",
            "À faire au plus tard le %s; l’appareil n’est entré dans l’entente que le %s.");

    PromisesLeft {
        ahead = List.copyOf(ahead);
        passed = List.copyOf(passed);
    }

    /** @param day on which the machines came; before the term it is as if they had always been there */
    static PromisesLeft of(Term term, List<PromisedTask> tasks, SeasonRules rules, LocalDate day) {
        List<Promise> ahead = new ArrayList<>();
        List<Unkept> passed = new ArrayList<>();
        Term rest = rest(term, day);
        for (PromisedTask task : tasks) {
            boolean counted = task.cadence().countsFromLastTime();
            for (Promise promise : Promises.in(counted ? rest : term, List.of(task), rules)) {
                Optional<Window> left = left(promise.window(), rest, counted);
                if (left.isPresent()) {
                    ahead.add(in(left.get(), promise));
                } else if (promise.who() == Who.TECHNICIAN) {
                    passed.add(new Unkept(promise, why(promise.window(), day)));
                }
            }
        }
        return new PromisesLeft(ahead, passed);
    }

    /** What is left of a term on a day. */
    static Term rest(Term term, LocalDate day) {
        return new Term(day.isAfter(term.from()) ? day : term.from(), term.until());
    }

    /** A count that starts anew would run on past the term: it is owed inside it. */
    private static Optional<Window> left(Window window, Term rest, boolean counted) {
        return counted ? window.common(rest.window()) : window.since(rest.from());
    }

    private static Promise in(Window window, Promise promise) {
        if (window.equals(promise.window())) {
            return promise;
        }
        LocalDate on = promise.due().on();
        LocalDate within =
                on.isBefore(window.from()) ? window.from() : on.isBefore(window.until()) ? on : window.last();
        return new Promise(
                promise.equipmentId(),
                promise.taskCode(),
                promise.who(),
                promise.minutes(),
                new Due(window, within, promise.due().act()),
                promise.reason());
    }

    private static Wording why(Window window, LocalDate day) {
        Wording last = DayInWords.of(window.last());
        Wording came = DayInWords.of(day);
        return new Wording(
                TOO_LATE.en().formatted(last.en(), came.en()), TOO_LATE.fr().formatted(last.fr(), came.fr()));
    }
}
