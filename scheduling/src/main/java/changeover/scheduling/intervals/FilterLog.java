package changeover.scheduling.intervals;

import changeover.scheduling.intervals.Look.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the records of one filter slot say of its filters' lives: each life begins with a change, and lies between the last
 * look that found it clean and the first that found it grey.
 *
 * <p>The household's tick and the technician's record of one change count once: two changes by different people within
 * three days are one, and the technician's word on how the old filter looked stands before the household's. What was seen
 * before the first change is left out, since nobody knows how long that filter had been in.
 */
public final class FilterLog {

    private static final int ONE_CHANGE_DAYS = 3;

    /** Within a day a look comes before the change, and the technician's word before the household's. */
    private static final Comparator<Look> AS_IT_WENT = Comparator.comparing(Look::day)
            .thenComparing(look -> look.what().change())
            .thenComparing(look -> look.by() != Look.By.TECHNICIAN)
            .thenComparing(Look::what);

    private FilterLog() {}

    /** @param looks in any order */
    public static List<Seen> seen(List<Look> looks) {
        List<Seen> seen = new ArrayList<>();
        Life life = null;
        for (Look look : once(looks)) {
            if (life != null) {
                life.look(look);
            }
            if (look.what().change()) {
                if (life != null) {
                    life.addTo(seen);
                }
                life = new Life(look.day());
            }
        }
        if (life != null) {
            life.addTo(seen);
        }
        return List.copyOf(seen);
    }

    private static List<Look> once(List<Look> looks) {
        List<Look> once = new ArrayList<>();
        for (Look look : looks.stream().sorted(AS_IT_WENT).toList()) {
            Look before = once.reversed().stream()
                    .filter(one -> one.what().change())
                    .findFirst()
                    .orElse(null);
            if (before != null && sameChange(before, look)) {
                once.set(once.lastIndexOf(before), joined(before, look));
            } else {
                once.add(look);
            }
        }
        return once;
    }

    private static boolean sameChange(Look before, Look look) {
        return look.what().change()
                && before.by() != look.by()
                && ChronoUnit.DAYS.between(before.day(), look.day()) <= ONE_CHANGE_DAYS;
    }

    private static Look joined(Look one, Look other) {
        Look technicians = one.by() == Look.By.TECHNICIAN ? one : other;
        Look households = one.by() == Look.By.TECHNICIAN ? other : one;
        What what = technicians.what() == What.CHANGED ? households.what() : technicians.what();
        return new Look(technicians.day(), Look.By.TECHNICIAN, what);
    }

    /** One filter, from the day it was put in. */
    private static final class Life {
        private final LocalDate in;
        private long clean;
        private long grey;

        Life(LocalDate in) {
            this.in = in;
        }

        void look(Look look) {
            long days = ChronoUnit.DAYS.between(in, look.day());
            if (days <= 0) {
                return;
            }
            if (grey == 0 && look.what().clean()) {
                clean = days;
            }
            if (grey == 0 && look.what().grey() && days > clean) {
                grey = days;
            }
        }

        void addTo(List<Seen> seen) {
            Seen one = said();
            if (one != null) {
                seen.add(one);
            }
        }

        private @Nullable Seen said() {
            if (grey > 0) {
                return new Seen.GreyBetween(clean, grey);
            }
            return clean > 0 ? new Seen.CleanAt(clean) : null;
        }
    }
}
