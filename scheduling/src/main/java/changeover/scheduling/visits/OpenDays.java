package changeover.scheduling.visits;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.ShutTimes;
import changeover.contracts.words.Wording;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/**
 * Nobody comes to a home that is shut: what is owed in days on some of which it is shut is owed in the longest run of those
 * on which it is open, and says so. Where no day of them is open it stays as it is.
 */
final class OpenDays {

    private static final Wording OPENS = new Wording("The home opens again on %s.", "La maison rouvre le %s.");
    private static final Wording SHUTS =
            new Wording("The home is shut from %s.", "La maison est fermée à partir du %s.");
    private static final Wording OPENS_AND_SHUTS = new Wording(
            "The home opens again on %s and is shut from %s.", "La maison rouvre le %s et est fermée à partir du %s.");

    private OpenDays() {}

    static List<Promise> of(List<Promise> promises, ShutTimes shut) {
        return shut.isNever()
                ? promises
                : promises.stream().map(promise -> of(promise, shut)).toList();
    }

    static Promise of(Promise promise, ShutTimes shut) {
        Due due = of(promise.due(), shut);
        if (due.equals(promise.due())) {
            return promise;
        }
        return new Promise(
                        promise.equipmentId(),
                        promise.taskCode(),
                        promise.who(),
                        promise.minutes(),
                        due,
                        promise.reason())
                .because(why(promise.window(), due.window()));
    }

    static Due of(Due due, ShutTimes shut) {
        return shut.longestOpen(due.window())
                .map(open -> new Due(open, open.nearest(due.on()), due.act()))
                .orElse(due);
    }

    /**
     * A year laid out in the days on which its home is open. That a home is shut for some days costs no promise: where less
     * would be kept for it, what technicians owe keeps all its days.
     *
     * @param lay lays the year out from what is owed
     * @param unkept how many promises such a year does not keep
     */
    static <Y> Y laid(List<Promise> owed, ShutTimes shut, Function<List<Promise>, Y> lay, ToIntFunction<Y> unkept) {
        return better(
                shut,
                () -> lay.apply(of(owed, shut)),
                () -> lay.apply(owed.stream()
                        .map(promise -> promise.who() == Who.HOUSEHOLD ? of(promise, shut) : promise)
                        .toList()),
                unkept);
    }

    /**
     * The year in the open days, unless it keeps less than the one in all days.
     *
     * @param unkept how many promises a year does not keep
     */
    static <Y> Y better(ShutTimes shut, Supplier<Y> open, Supplier<Y> always, ToIntFunction<Y> unkept) {
        Y kept = open.get();
        if (shut.isNever() || unkept.applyAsInt(kept) == 0) {
            return kept;
        }
        Y other = always.get();
        return unkept.applyAsInt(kept) <= unkept.applyAsInt(other) ? kept : other;
    }

    private static Wording why(Window window, Window open) {
        Wording opens = DayInWords.of(open.from());
        Wording shuts = DayInWords.of(open.until());
        if (open.until().equals(window.until())) {
            return new Wording(OPENS.en().formatted(opens.en()), OPENS.fr().formatted(opens.fr()));
        }
        if (open.from().equals(window.from())) {
            return new Wording(SHUTS.en().formatted(shuts.en()), SHUTS.fr().formatted(shuts.fr()));
        }
        return new Wording(
                OPENS_AND_SHUTS.en().formatted(opens.en(), shuts.en()),
                OPENS_AND_SHUTS.fr().formatted(opens.fr(), shuts.fr()));
    }
}
