package changeover.scheduling.dayplan.change;

import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.dayplan.HourMoves;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.Rosters;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Somebody is ill: the visits of their day are shared out or given back, and whoever must hear of it is written down. */
@ApplicationScoped
public class Absences {

    @Inject
    DaysHeld held;

    @Inject
    DayPlans plans;

    @Inject
    DayChanges changes;

    @Inject
    HourMoves moves;

    @Inject
    Rosters rosters;

    /** What has begun or ended stays with them; to what they only go along stays with whoever leads, and somebody else is found. */
    public List<SharedOut.Share> shares(LocalDate day, UUID person) {
        int begun = held.begun(day);
        DaysHeld.Held all = held.onWith(person, day, begun);
        List<UUID> over = plans.of(day).stream()
                .flatMap(plan -> plan.stops().stream())
                .filter(stop -> stop.ended() != null)
                .map(DayPlan.Stop::visitId)
                .toList();
        Set<UUID> own = plans.leads(person, day);
        HeldDay theirs = all.of(person).orElse(null);
        if (theirs == null) {
            return List.of();
        }
        HeldDay open = theirs.with(theirs.held().stream()
                .filter(one -> one.starts() >= begun && !over.contains(one.visit()))
                .toList());
        Set<UUID> along = open.held().stream()
                .map(HeldDay.Held::visit)
                .filter(visit -> !own.contains(visit))
                .collect(Collectors.toSet());
        List<HeldDay> others = all.days().stream()
                .filter(one -> !one.technician().equals(person))
                .toList();
        return SharedOut.of(open, along, others, all.roads()).shares();
    }

    /**
     * A day that was off already stays off for the reason that it had.
     *
     * @param why in the words of who writes it: it is kept with every visit that is not as it was
     */
    public List<SharedOut.Share> share(LocalDate day, UUID person, String why) {
        List<SharedOut.Share> shares = shareOut(day, person, why);
        if (rosters.daysOff(Window.ofDay(day)).stream()
                .noneMatch(off -> off.personId().filter(person::equals).isPresent())) {
            rosters.takeOff(person, day, why);
        }
        return shares;
    }

    /** The same of somebody whose hours need not be taken off: they work here no more. */
    List<SharedOut.Share> shareOut(LocalDate day, UUID person, String why) {
        List<SharedOut.Share> shares = shares(day, person);
        List<SharedOut.Share> led = shares.stream().filter(one -> !one.along()).toList();
        changes.toRing(day, person, led, why);
        moves.write(led.stream().map(one -> moved(one, day, person)).toList(), new Moving(Moving.By.US, why));
        changes.giveBack(led.stream()
                .filter(one -> one.technician() == null)
                .map(SharedOut.Share::visit)
                .toList());
        changes.move(day, led.stream().flatMap(Absences::move).toList());
        changes.along(shares.stream()
                .filter(one -> one.along() || one.second() != null)
                .map(one -> new DayChanges.Along(one.visit(), one.along() ? one.technician() : one.second()))
                .toList());
        return shares;
    }

    private static HourMoves.Moved moved(SharedOut.Share one, LocalDate day, UUID person) {
        boolean back = one.technician() == null;
        return new HourMoves.Moved(
                one.visit(),
                person,
                day,
                Minutes.time(one.was()),
                one.technician(),
                back ? null : day,
                back ? null : Minutes.time(one.starts()),
                one.told());
    }

    private static Stream<DayChanges.Move> move(SharedOut.Share one) {
        UUID other = one.technician();
        return other == null
                ? Stream.empty()
                : Stream.of(
                        new DayChanges.Move(one.visit(), other, Minutes.time(one.starts()), Minutes.time(one.ends())));
    }
}
