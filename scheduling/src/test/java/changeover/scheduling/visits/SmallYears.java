package changeover.scheduling.visits;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;

/** Made-up homes with a few promises within two weeks, many of them, each told by its seed. */
final class SmallYears {

    static final LocalDate FIRST = LocalDate.of(2026, 3, 1);
    static final Term TERM = Term.ofYear(FIRST);
    static final int HORIZON = 14;
    static final SeasonRules NO_SEASONS = new SeasonRules(new Climate(List.of()), true);

    private SmallYears() {}

    interface Check {
        void on(List<Promise> promises, Random random);
    }

    /** @param usual how many every day; in the full run twenty times as many */
    static void each(int usual, int atMost, Check check) {
        int cases = Boolean.getBoolean("changeover.deep") ? usual * 20 : usual;
        for (int seed = 0; seed < cases; seed++) {
            Random random = new Random(seed);
            List<Promise> promises = promises(1 + random.nextInt(atMost), random);
            try {
                check.on(promises, random);
            } catch (RuntimeException | AssertionError failed) {
                throw new AssertionError("seed " + seed + ": " + promises, failed);
            }
        }
    }

    /** Some are as like as one egg to another. */
    static List<Promise> promises(int count, Random random) {
        List<Promise> promises = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            int from = random.nextInt(HORIZON);
            int days = 1 + random.nextInt(HORIZON - from);
            int name = random.nextInt(8) == 0 ? 0 : number;
            int minutes = random.nextInt(6) == 0 ? 0 : 5 * random.nextInt(13);
            promises.add(promise(name, from, random.nextInt(3) == 0 ? days : Math.min(days, 4), minutes));
        }
        return promises;
    }

    static Promise promise(int number, int from, int days, int minutes) {
        Window window = new Window(FIRST.plusDays(from), FIRST.plusDays(from + days));
        return new Promise(
                new UUID(1, number % 3),
                "task-" + number,
                Who.TECHNICIAN,
                minutes,
                new Due(window, window.from(), Due.Act.DO),
                new Wording("because", "parce que"));
    }

    static List<Pin> pins(Random random) {
        List<Pin> pins = new ArrayList<>();
        for (int pin = 0; pin < random.nextInt(4); pin++) {
            pins.add(new Pin(
                    new UUID(7, pin),
                    FIRST.plusDays(random.nextInt(HORIZON)),
                    random.nextInt(4) > 0,
                    random.nextBoolean() ? List.of() : promises(1 + random.nextInt(2), random)));
        }
        return pins;
    }
}
