package changeover.scheduling.dayplan.change;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A whole day falls away: each of its visits goes to the first later day on which it disturbs nobody. Whose last day is near
 * chooses first; whose days are over chooses last, and is named. What finds no place goes back to the season.
 *
 * @param visits in the order of the day
 */
public record WholeDay(List<Goes> visits) {

    /**
     * A visit that leaves its day.
     *
     * @param customer who must hear of it; null where nobody is known
     * @param told whether they were told its hour
     * @param was minute at which it was to begin
     * @param together whether two go there: such a visit is given its day by hand
     */
    public record Leaving(
            UUID visit,
            UUID home,
            String address,
            @Nullable UUID customer,
            UUID technician,
            Window window,
            boolean told,
            int was,
            boolean together) {}

    /** What became of the promises of a visit. */
    public enum Standing {
        /** It has a day inside its window. */
        KEPT,
        /** It has a day, but its window is over by then. */
        LATE,
        /** It has no day, and its window has days left. */
        OPEN,
        /** It has no day, and its window is over. */
        OVER;

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Standing ofCode(String code) {
            return valueOf(code.toUpperCase(Locale.ROOT));
        }
    }

    /** @param day null, with the technician, where it goes back to the season */
    public record Goes(
            Leaving visit,
            @Nullable UUID technician,
            @Nullable LocalDate day,
            int starts,
            int ends,
            Standing standing) {

        /** The visit's own promise is broken, or cannot be kept any more. */
        public boolean unkept() {
            return standing == Standing.LATE || standing == Standing.OVER;
        }
    }

    private static final Comparator<Leaving> URGENT = Comparator.comparing(
                    (Leaving one) -> one.window().until())
            .thenComparing(one -> !one.told())
            .thenComparingInt(Leaving::was)
            .thenComparing(Leaving::visit);

    public WholeDay {
        visits = List.copyOf(visits);
    }

    /**
     * @param days the later days, the first one first
     * @param held a day as it stands, with all that leave as wanted; asked for only while somebody still looks for a day
     */
    public static WholeDay of(List<Leaving> leaving, List<LocalDate> days, Function<LocalDate, DaysHeld.Held> held) {
        var goes = new ArrayList<Goes>();
        var left = new ArrayList<>(
                leaving.stream().filter(one -> !one.together()).sorted(URGENT).toList());
        for (LocalDate day : days) {
            if (left.isEmpty()) {
                break;
            }
            DaysHeld.Held all = held.apply(day);
            var open = new ArrayList<>(all.days());
            for (boolean late : List.of(false, true)) {
                for (Leaving one : List.copyOf(left)) {
                    if (late ? one.window().until().isAfter(day) : !one.window().contains(day)) {
                        continue;
                    }
                    place(one, day, all, open).ifPresent(found -> {
                        left.remove(one);
                        goes.add(found);
                    });
                }
            }
        }
        LocalDate first = days.isEmpty() ? LocalDate.MIN : days.getFirst();
        leaving.stream()
                .filter(one -> one.together() || left.contains(one))
                .map(one -> new Goes(
                        one, null, null, 0, 0, one.window().until().isAfter(first) ? Standing.OPEN : Standing.OVER))
                .forEach(goes::add);
        goes.sort(Comparator.comparingInt((Goes one) -> one.visit().was())
                .thenComparing(one -> one.visit().visit()));
        return new WholeDay(goes);
    }

    private static Optional<Goes> place(Leaving one, LocalDate day, DaysHeld.Held all, List<HeldDay> open) {
        return all.wanted().stream()
                .filter(wanted -> wanted.visit().equals(one.visit()))
                .flatMap(wanted -> Insertions.offers(open, wanted, all.roads(), Integer.MAX_VALUE).stream())
                .filter(offer -> offer.moved().isEmpty())
                .findFirst()
                .map(offer -> {
                    open.replaceAll(other -> other.technician().equals(offer.technician()) ? offer.day() : other);
                    return new Goes(
                            one,
                            offer.technician(),
                            day,
                            offer.starts(),
                            offer.ends(),
                            one.window().contains(day) ? Standing.KEPT : Standing.LATE);
                });
    }
}
