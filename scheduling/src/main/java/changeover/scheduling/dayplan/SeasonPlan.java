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
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Days for the visits of a season that have none. Whoever's deadline is nearest chooses first; each takes the first day
 * of its window on which a technician with the tickets it needs has the hours free, and of several technicians the one
 * with the least work that day. A visit for two waits for an hour that both have, and whoever leads holds the tickets; one
 * that needs a time of day begins in it. Half an hour is left between two visits. Roads and distances are not reckoned.
 * What has a day already is never moved; the same questions give the same answer.
 */
public record SeasonPlan(List<Given> given, List<NotPlaced> notPlaced) {

    /** @param need how many people, which tickets, between which hours it begins */
    public record Waiting(UUID visit, Window window, int minutes, Need need, String address) {}

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

    /** @param second who goes along; null where one goes alone */
    public record Given(
            UUID visit, UUID technician, @Nullable UUID second, LocalDate day, LocalTime starts, LocalTime ends) {}

    /** Why a visit found no day: its window is over, nobody holds its tickets, two must go and there is one, or the hours are gone. */
    public enum Why {
        WINDOW_OVER,
        NO_TICKET,
        NO_SECOND,
        NO_HOURS
    }

    public record NotPlaced(UUID visit, Why why) {}

    /** Hours are only ever given away: where one found no day, the next of the same kind need not look again. */
    private record Alike(Window window, int minutes, Need need) {

        static Alike of(Waiting visit) {
            return new Alike(visit.window(), visit.minutes(), visit.need());
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
                UUID second = one.second();
                if (second != null) {
                    diary.take(new Taken(second, one.day(), one.starts(), one.ends()));
                }
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
        return visit.window().since(first).stream()
                .flatMap(left -> left.from().datesUntil(left.until()))
                .flatMap(day -> lightestFirst(crew, diary, day)
                        .filter(technician -> technician.mayOn(day, visit.need().tickets()))
                        .flatMap(technician -> on(visit, technician, crew, diary, day)))
                .findFirst();
    }

    private static Stream<Technician> lightestFirst(List<Technician> crew, Diary diary, LocalDate day) {
        return crew.stream().sorted(Comparator.comparingInt(technician -> diary.load(technician.id(), day)));
    }

    /** The first hour that the technician has on the day, together with somebody where two go. */
    private static Stream<Given> on(
            Waiting visit, Technician technician, List<Technician> crew, Diary diary, LocalDate day) {
        int minutes = Math.max(Diary.QUARTER, visit.minutes());
        if (visit.need().people() == 1) {
            return diary.gap(technician.id(), day, minutes, visit.need()).stream()
                    .map(starts -> given(visit, technician, null, day, starts, minutes));
        }
        return lightestFirst(crew, diary, day)
                .filter(other -> !other.id().equals(technician.id()) && other.mayOn(day, Set.of()))
                .flatMap(other -> diary.gapOfBoth(technician.id(), other.id(), day, minutes, visit.need()).stream()
                        .map(starts -> given(visit, technician, other.id(), day, starts, minutes)))
                .min(Comparator.comparing(Given::starts))
                .stream();
    }

    private static Given given(
            Waiting visit, Technician technician, @Nullable UUID second, LocalDate day, LocalTime starts, int minutes) {
        return new Given(visit.visit(), technician.id(), second, day, starts, starts.plusMinutes(minutes));
    }

    private static Why why(Waiting visit, List<Technician> crew, LocalDate first) {
        Optional<Window> left = visit.window().since(first);
        if (left.isEmpty()) {
            return Why.WINDOW_OVER;
        }
        List<LocalDate> days = left.get().from().datesUntil(left.get().until()).toList();
        Set<String> tickets = visit.need().tickets();
        if (days.stream().noneMatch(day -> crew.stream().anyMatch(one -> one.mayOn(day, tickets)))) {
            return Why.NO_TICKET;
        }
        boolean enough = days.stream()
                .anyMatch(day ->
                        crew.stream().filter(one -> one.mayOn(day, Set.of())).count()
                                >= visit.need().people());
        return enough ? Why.NO_HOURS : Why.NO_SECOND;
    }
}
