package changeover.scheduling.dayplan.change;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.DayOff;
import changeover.scheduling.dayplan.Rosters;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Days off from a first day to a last one, and what is booked on somebody's days off all the same. */
@ApplicationScoped
public class DaysAway {

    /** Days at most that are taken off at once. */
    public static final int MOST = 366;

    @Inject
    Rosters rosters;

    @Inject
    Leaving leaving;

    /**
     * A day that is off already stays off for the reason that it had; refused where all of them are.
     *
     * @param person null when the whole business is closed
     */
    public void takeOff(@Nullable UUID person, Window days, String why) {
        if (days.days() > MOST) {
            throw Refusal.of("roster.span", Map.of("most", MOST)).at("last").thrown();
        }
        Set<LocalDate> off = rosters.daysOff(days).stream()
                .filter(one -> one.personId().equals(Optional.ofNullable(person)))
                .map(DayOff::day)
                .collect(Collectors.toSet());
        List<LocalDate> open = days.from()
                .datesUntil(days.until())
                .filter(day -> !off.contains(day))
                .toList();
        if (open.isEmpty()) {
            throw Refusal.of("constraint.one_day_off_a_day").at("day").thrown();
        }
        open.forEach(day -> rosters.takeOff(person, day, why));
    }

    /**
     * The days are worked after all: that one, and those after it that are off for the same reason.
     *
     * @param last the last of them
     * @return whether it was a day off of this person or of the whole business
     */
    public boolean workAfterAll(UUID person, UUID dayOff, @Nullable LocalDate last) {
        Optional<DayOff> first = rosters.dayOff(dayOff);
        if (!rosters.workAfterAll(person, dayOff)) {
            return false;
        }
        first.filter(one -> last != null && last.isAfter(one.day()))
                .ifPresent(one -> rosters.daysOff(Window.ofDays(one.day(), last == null ? one.day() : last)).stream()
                        .filter(other -> other.personId().equals(one.personId())
                                && other.why().equals(one.why()))
                        .forEach(other -> rosters.workAfterAll(person, other.id())));
        return true;
    }

    /** Visits that somebody has from a day on, on days on which they or everybody is off. */
    public List<Leaving.Left> booked(UUID person, LocalDate today) {
        List<Leaving.Left> ahead = leaving.left(person, today.minusDays(1));
        if (ahead.isEmpty()) {
            return List.of();
        }
        Set<LocalDate> off = rosters
                .daysOff(Window.ofDays(today, ahead.getLast().day()))
                .stream()
                .filter(one -> one.personId().map(person::equals).orElse(true))
                .map(DayOff::day)
                .collect(Collectors.toSet());
        return ahead.stream().filter(one -> off.contains(one.day())).toList();
    }
}
