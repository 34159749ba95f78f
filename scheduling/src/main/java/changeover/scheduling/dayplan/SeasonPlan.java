package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Days for the visits of a season that have none. Whoever's deadline is nearest chooses first; each takes the first day
 * of its window on which a technician with the tickets it needs has the hours free, and of several technicians the one
 * with the least work that day. Half an hour is left between two visits. Roads and distances are not reckoned. What has
 * a day already is never moved; the same questions give the same answer.
 */
public record SeasonPlan(List<Given> given, List<NotPlaced> notPlaced) {

    static final int BETWEEN = 30;
    private static final int QUARTER = 15;

    /** @param tickets kinds of ticket that its tasks need */
    public record Waiting(UUID visit, Window window, int minutes, Set<String> tickets, String address) {}

    /**
     * @param tickets the last day that each kind of ticket holds
     * @param last their last day here
     */
    public record Technician(UUID id, Map<String, LocalDate> tickets, LocalDate last) {

        boolean mayOn(LocalDate day, Set<String> needed) {
            return !day.isAfter(last)
                    && needed.stream().allMatch(kind -> {
                        LocalDate last = tickets.get(kind);
                        return last != null && !day.isAfter(last);
                    });
        }
    }

    /** Hours that a technician has given away already. */
    public record Taken(UUID technician, LocalDate day, LocalTime starts, LocalTime ends) {}

    public record Given(UUID visit, UUID technician, LocalDate day, LocalTime starts, LocalTime ends) {}

    /** Why a visit found no day: its window is over, nobody holds its tickets, or nobody has the hours. */
    public enum Why {
        WINDOW_OVER,
        NO_TICKET,
        NO_HOURS
    }

    public record NotPlaced(UUID visit, Why why) {}

    private record Place(UUID technician, LocalDate day) {}

    public SeasonPlan {
        given = List.copyOf(given);
        notPlaced = List.copyOf(notPlaced);
    }

    /** @param first the first day on which anything may be given */
    public static SeasonPlan of(
            List<Waiting> waiting, List<Technician> crew, Roster roster, List<Taken> taken, LocalDate first) {
        var diary = new HashMap<Place, List<Taken>>();
        taken.forEach(one -> diary.computeIfAbsent(new Place(one.technician(), one.day()), _ -> new ArrayList<>())
                .add(one));
        var given = new ArrayList<Given>();
        var notPlaced = new ArrayList<NotPlaced>();
        List<Technician> ordered =
                crew.stream().sorted(Comparator.comparing(Technician::id)).toList();
        waiting.stream().sorted(ORDER).forEach(visit -> {
            Optional<Given> place = place(visit, ordered, roster, diary, first);
            place.ifPresent(one -> {
                given.add(one);
                diary.computeIfAbsent(new Place(one.technician(), one.day()), _ -> new ArrayList<>())
                        .add(new Taken(one.technician(), one.day(), one.starts(), one.ends()));
            });
            if (place.isEmpty()) {
                notPlaced.add(new NotPlaced(visit.visit(), why(visit, crew, first)));
            }
        });
        return new SeasonPlan(given, notPlaced);
    }

    /** By deadline and opening; then by address, so that neighbours come on one day. */
    private static final Comparator<Waiting> ORDER = Comparator.comparing(Waiting::window)
            .thenComparing(Waiting::address)
            .thenComparing(Waiting::visit);

    private static Optional<Given> place(
            Waiting visit, List<Technician> crew, Roster roster, Map<Place, List<Taken>> diary, LocalDate first) {
        return visit.window().since(first).stream()
                .flatMap(left -> left.from().datesUntil(left.until()))
                .flatMap(day -> crew.stream()
                        .filter(technician -> technician.mayOn(day, visit.tickets()))
                        .sorted(Comparator.comparingInt(technician -> load(diary.get(new Place(technician.id(), day)))))
                        .flatMap(technician -> roster
                                .on(technician.id(), day)
                                .flatMap(hours ->
                                        gap(hours, visit.minutes(), diary.get(new Place(technician.id(), day))))
                                .map(starts -> new Given(
                                        visit.visit(),
                                        technician.id(),
                                        day,
                                        starts,
                                        starts.plusMinutes(lasts(visit.minutes()))))
                                .stream()))
                .findFirst();
    }

    private static int load(@Nullable List<Taken> day) {
        return day == null
                ? 0
                : day.stream()
                        .mapToInt(one -> minute(one.ends()) - minute(one.starts()))
                        .sum();
    }

    /** The first quarter of an hour from which the visit fits between the others. */
    private static Optional<LocalTime> gap(Roster.Hours hours, int minutes, @Nullable List<Taken> day) {
        int needed = lasts(minutes);
        int starts = minute(hours.starts());
        List<Taken> others = day == null
                ? List.of()
                : day.stream().sorted(Comparator.comparing(Taken::starts)).toList();
        for (Taken other : others) {
            if (starts + needed + BETWEEN <= minute(other.starts())) {
                break;
            }
            starts = Math.max(starts, quarter(minute(other.ends()) + BETWEEN));
        }
        return starts + needed <= minute(hours.ends())
                ? Optional.of(LocalTime.of(starts / 60, starts % 60))
                : Optional.empty();
    }

    private static Why why(Waiting visit, List<Technician> crew, LocalDate first) {
        Optional<Window> left = visit.window().since(first);
        if (left.isEmpty()) {
            return Why.WINDOW_OVER;
        }
        boolean somebody = left.get()
                .from()
                .datesUntil(left.get().until())
                .anyMatch(day -> crew.stream().anyMatch(technician -> technician.mayOn(day, visit.tickets())));
        return somebody ? Why.NO_HOURS : Why.NO_TICKET;
    }

    private static int lasts(int minutes) {
        return Math.max(QUARTER, minutes);
    }

    private static int quarter(int minute) {
        return (minute + QUARTER - 1) / QUARTER * QUARTER;
    }

    private static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }
}
