package changeover.scheduling.supply;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ObjLongConsumer;

/** One way in which a part will be used up in the coming year: surely, perhaps, or by a filter that turns grey when it does. */
public sealed interface Use {

    /** A task that always takes so much of the part, on any day of its window. */
    record Sure(Window days, long thousandths) implements Use {}

    /**
     * A task that took it so many of the times that it was done.
     *
     * @param took of {@code done}, at most all of them
     */
    record Perhaps(Window days, long thousandths, long took, long done) implements Use {
        public Perhaps {
            if (took < 0 || done < 1 || took > done) {
                throw new IllegalArgumentException(took + " of " + done);
            }
        }
    }

    /**
     * A filter is changed at the look that finds it grey, at the latest on the last day of its round.
     *
     * @param lastChange the day it was put in; a round that is over by the first day ends on that day
     * @param looks days after the change, in order, each before {@code changeDays}
     * @param lives equally likely lives of a filter in this home: for each the chance of being grey by each look
     */
    record Rounds(LocalDate lastChange, List<Integer> looks, int changeDays, List<double[]> lives, long thousandths)
            implements Use {
        public Rounds {
            looks = List.copyOf(looks);
            lives = List.copyOf(lives);
            if (changeDays < 1 || lives.isEmpty()) {
                throw new IllegalArgumentException("a round of " + changeDays + " days");
            }
        }
    }

    /** Tells every day in the year on which it is used, and how much, in one year that may come. */
    default void inOneYear(Window year, SplittableRandom chance, ObjLongConsumer<LocalDate> used) {
        switch (this) {
            case Sure(Window days, long thousandths) -> used.accept(someDay(days, year, chance), thousandths);
            case Perhaps(Window days, long thousandths, long took, long done) -> {
                if (chance.nextDouble() < share(took, done, chance)) {
                    used.accept(someDay(days, year, chance), thousandths);
                }
            }
            case Rounds rounds -> rounds(rounds, year, chance, used);
        }
    }

    private static LocalDate someDay(Window days, Window year, SplittableRandom chance) {
        Window open = days.common(year).orElse(days);
        return open.from().plusDays(chance.nextLong(open.days()));
    }

    /** One share that what was seen leaves possible; no more is believed beforehand in one than in another. */
    private static double share(long took, long done, SplittableRandom chance) {
        double scale = Math.min(1, 200.0 / done);
        double with = sum((int) Math.round(took * scale) + 1, chance);
        double without = sum((int) Math.round((done - took) * scale) + 1, chance);
        return with / (with + without);
    }

    private static double sum(int times, SplittableRandom chance) {
        double sum = 0;
        for (int time = 0; time < times; time++) {
            sum -= Math.log(1 - chance.nextDouble());
        }
        return sum;
    }

    private static void rounds(Rounds rounds, Window year, SplittableRandom chance, ObjLongConsumer<LocalDate> used) {
        double[] life = rounds.lives.get(chance.nextInt(rounds.lives.size()));
        LocalDate day = rounds.lastChange;
        do {
            day = day.plusDays(round(rounds, life, chance));
            if (day.isBefore(year.from())) {
                day = year.from();
            }
            if (day.isBefore(year.until())) {
                used.accept(day, rounds.thousandths);
            }
        } while (day.isBefore(year.until()));
    }

    private static int round(Rounds rounds, double[] life, SplittableRandom chance) {
        double drawn = chance.nextDouble();
        for (int look = 0; look < rounds.looks.size(); look++) {
            if (drawn < life[look]) {
                return rounds.looks.get(look);
            }
        }
        return rounds.changeDays;
    }
}
