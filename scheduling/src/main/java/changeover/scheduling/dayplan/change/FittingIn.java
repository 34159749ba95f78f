package changeover.scheduling.dayplan.change;

import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One visit more in a day of the current business: the three ways that disturb it least, one of them taken. */
@ApplicationScoped
public class FittingIn {

    private static final int WAYS = 3;
    private static final int FIVE = 5;

    @Inject
    DaysHeld held;

    @Inject
    DayChanges changes;

    @Inject
    Appointments appointments;

    @Inject
    Visits visits;

    /** @param roads how they were reckoned */
    public record Ways(List<Insertions.Offer> offers, Drives.By roads) {}

    /** Not before now, rounded up to five minutes; none for a visit that has ended. */
    public Ways ways(UUID visit, LocalDate day) {
        if (visits.ending(visit).isPresent()) {
            return new Ways(List.of(), Drives.By.CROW);
        }
        int from = (held.begun(day) + FIVE - 1) / FIVE * FIVE;
        DaysHeld.Held all = held.with(Set.of(visit), day, from);
        return new Ways(
                all.wanted().stream()
                        .findFirst()
                        .map(wanted -> Insertions.offers(all.days(), wanted, all.roads(), WAYS))
                        .orElse(List.of()),
                all.roads().by());
    }

    public List<Insertions.Offer> offers(UUID visit, LocalDate day) {
        return ways(visit, day).offers();
    }

    /** Tells one way from any other, so that a yes is to what was shown. */
    public static int shown(Insertions.Offer offer) {
        return (offer.technician() + " " + offer.starts() + " " + offer.moved()).hashCode() & Integer.MAX_VALUE;
    }

    /**
     * Takes the way that was shown; refused where it is no longer one of the three.
     *
     * @param moving why it moves from the hour that it has, where the customer was told that
     */
    public Insertions.Offer take(UUID visit, LocalDate day, int shown, @Nullable Moving moving) {
        if (visits.ending(visit).isPresent()) {
            throw Refusal.of("visit.has-ended").thrown();
        }
        Insertions.Offer offer = offers(visit, day).stream()
                .filter(one -> shown(one) == shown)
                .findFirst()
                .orElseThrow(() -> Refusal.of("day-order.changed").thrown());
        changes.move(
                day,
                offer.day().held().stream()
                        .filter(one -> offer.moved().stream()
                                .anyMatch(moved -> moved.visit().equals(one.visit())))
                        .map(one -> new DayChanges.Move(
                                one.visit(), offer.technician(), Minutes.time(one.starts()), Minutes.time(one.ends())))
                        .toList());
        appointments.give(
                visit,
                new Appointments.Slot(
                        offer.technician(), day, Minutes.time(offer.starts()), Minutes.time(offer.ends())),
                moving);
        return offer;
    }
}
