package changeover.scheduling.supply;

import changeover.contracts.catalogue.Cadence;
import changeover.scheduling.households.SlotRhythm;
import changeover.scheduling.intervals.Limits;
import changeover.scheduling.intervals.Weibull;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plays the rounds of a home's filter: looked at and changed as its household's list says, grey as the home's own lives say. */
final class FilterLives {

    private static final int LIVES = 40;

    private FilterLives() {}

    /** Empty for a cadence that does not count from the last change: its days are known. */
    static Optional<Use> rounds(SlotRhythm slot, Cadence cadence, LocalDate last, long thousandths) {
        return switch (cadence) {
            case Cadence.LookThenChange(int look, int change) ->
                Optional.of(rounds(slot, look < change ? List.of(look) : List.of(), change, last, thousandths));
            case Cadence.CheckThenReplace(int check, int cap) -> {
                List<Integer> looks = new ArrayList<>();
                for (int month = check; month < cap; month += check) {
                    looks.add(days(month));
                }
                yield Optional.of(rounds(slot, looks, days(cap), last, thousandths));
            }
            case Cadence.EveryMonths(int months, int _, int _) ->
                Optional.of(rounds(slot, List.of(), days(months), last, thousandths));
            case Cadence.BeforeSeason _, Cadence.EachSeason _, Cadence.TimesAYear _, Cadence.OnRequest _ ->
                Optional.empty();
        };
    }

    private static Use rounds(SlotRhythm slot, List<Integer> looks, int changeDays, LocalDate last, long thousandths) {
        List<double[]> lives = slot.learned().posterior().likely(LIVES).stream()
                .map(life -> chances(life, looks))
                .toList();
        return new Use.Rounds(last, looks, changeDays, lives, thousandths);
    }

    private static double[] chances(Weibull life, List<Integer> looks) {
        return looks.stream().mapToDouble(life::greyBy).toArray();
    }

    private static int days(int months) {
        return (int) Math.round(months * Limits.MONTH_DAYS);
    }
}
