package changeover.scheduling.dayplan;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;

/** Which hours of each technician's days are free while days are being given; half an hour is left between two visits. */
final class Diary {

    static final int BETWEEN = 30;
    static final int QUARTER = 15;
    private static final int NONE = -1;

    private record Place(UUID technician, LocalDate day) {}

    /** One technician's day: their hours, and what is taken of them in order. */
    private static final class Page {

        private final Optional<Roster.Hours> hours;
        private final TreeSet<SeasonPlan.Taken> taken = new TreeSet<>(Comparator.comparing(SeasonPlan.Taken::starts));
        private int load;

        Page(Optional<Roster.Hours> hours) {
            this.hours = hours;
        }
    }

    private final Roster roster;
    private final Map<Place, Page> pages = new HashMap<>();

    Diary(Roster roster, List<SeasonPlan.Taken> taken) {
        this.roster = roster;
        taken.forEach(this::take);
    }

    void take(SeasonPlan.Taken taken) {
        Page page = page(taken.technician(), taken.day());
        page.taken.add(taken);
        page.load += Minutes.of(taken.ends()) - Minutes.of(taken.starts());
    }

    /** Minutes that are taken already. */
    int load(UUID technician, LocalDate day) {
        return page(technician, day).load;
    }

    /** The first quarter of an hour from which so many minutes fit between the others, within the hours that are needed. */
    Optional<LocalTime> gap(UUID technician, LocalDate day, int minutes, Need need) {
        return time(gap(technician, day, minutes, need, 0));
    }

    /** The first that two have together: whoever is free later says from when the other is asked again. */
    Optional<LocalTime> gapOfBoth(UUID technician, UUID second, LocalDate day, int minutes, Need need) {
        int starts = gap(technician, day, minutes, need, 0);
        while (starts != NONE) {
            int theirs = gap(second, day, minutes, need, starts);
            if (theirs == starts || theirs == NONE) {
                return time(theirs);
            }
            starts = gap(technician, day, minutes, need, theirs);
        }
        return Optional.empty();
    }

    private static Optional<LocalTime> time(int minute) {
        return minute == NONE ? Optional.empty() : Optional.of(LocalTime.of(minute / 60, minute % 60));
    }

    private int gap(UUID technician, LocalDate day, int minutes, Need need, int from) {
        Page page = page(technician, day);
        if (page.hours.isEmpty()) {
            return NONE;
        }
        Roster.Hours hours = page.hours.get();
        int earliest = need.earliest() == null ? 0 : quarter(Minutes.of(need.earliest()));
        int starts = Math.max(Math.max(Minutes.of(hours.starts()), earliest), from);
        for (SeasonPlan.Taken other : page.taken) {
            if (starts + minutes + BETWEEN <= Minutes.of(other.starts())) {
                break;
            }
            starts = Math.max(starts, quarter(Minutes.of(other.ends()) + BETWEEN));
        }
        boolean late = need.latest() != null && starts > Math.max(earliest, Minutes.of(need.latest()));
        return late || starts + minutes > Minutes.of(hours.ends()) ? NONE : starts;
    }

    private Page page(UUID technician, LocalDate day) {
        return pages.computeIfAbsent(new Place(technician, day), _ -> new Page(roster.on(technician, day)));
    }

    private static int quarter(int minute) {
        return (minute + QUARTER - 1) / QUARTER * QUARTER;
    }
}
