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

/**
 * Days for the visits of a season that have none. Whoever's deadline is nearest chooses first; each takes the first day
 * of its window on which a technician with the tickets it needs has the hours free, and of several technicians the one
 * with the least work that day. Half an hour is left between two visits. Roads and distances are not reckoned. What has
 * a day already is never moved; the same questions give the same answer.
 */
public record SeasonPlan(List<Given> given, List<NotPlaced> notPlaced) {

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

    /** Hours are only ever given away: where one found no day, the next of the same kind need not look again. */
    private record Alike(Window window, int minutes, Set<String> tickets) {

        static Alike of(Waiting visit) {
            return new Alike(visit.window(), visit.minutes(), visit.tickets());
        }
    }

    public SeasonPlan {
        given = List.copyOf(given);
        notPlaced = List.copyOf(notPlaced);
    }

    /** @param first the first day on which anything may be given */
    public static SeasonPlan of(
            List<Waiting> waiting, List<Technician> crew, Roster roster, List<Taken> taken, LocalDate first) {
        var diary = new Diary(roster, taken);
        var given = new ArrayList<Given>();
        var notPlaced = new ArrayList<NotPlaced>();
        List<Technician> ordered =
                crew.stream().sorted(Comparator.comparing(Technician::id)).toList();
        var searched = new HashMap<Alike, LocalDate>();
        waiting.stream().sorted(ORDER).forEach(visit -> {
            LocalDate from = searched.getOrDefault(Alike.of(visit), first);
            Optional<Given> place = place(visit, ordered, diary, from.isBefore(first) ? first : from);
            searched.put(
                    Alike.of(visit), place.map(Given::day).orElse(visit.window().until()));
            place.ifPresent(one -> {
                given.add(one);
                diary.take(new Taken(one.technician(), one.day(), one.starts(), one.ends()));
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

    private static Optional<Given> place(Waiting visit, List<Technician> crew, Diary diary, LocalDate first) {
        int minutes = Math.max(Diary.QUARTER, visit.minutes());
        return visit.window().since(first).stream()
                .flatMap(left -> left.from().datesUntil(left.until()))
                .flatMap(day -> crew.stream()
                        .filter(technician -> technician.mayOn(day, visit.tickets()))
                        .sorted(Comparator.comparingInt(technician -> diary.load(technician.id(), day)))
                        .flatMap(technician -> diary
                                .gap(technician.id(), day, minutes)
                                .map(starts -> new Given(
                                        visit.visit(), technician.id(), day, starts, starts.plusMinutes(minutes)))
                                .stream()))
                .findFirst();
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
}
