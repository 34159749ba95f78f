package changeover.scheduling.dayplan.change;

import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.SecondHands;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One visit more in a day of the current business: the three ways that disturb it least, one of them taken. Where somebody rang,
 * whoever is on call goes when nobody who works then can.
 */
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
    SecondHands seconds;

    @Inject
    Visits visits;

    /**
     * @param roads how they were reckoned
     * @param people how many must go
     */
    public record Ways(List<Insertions.Offer> offers, Drives.By roads, int people) {}

    /** Not before now, rounded up to five minutes; none for a visit that has ended. */
    public Ways ways(UUID visit, LocalDate day) {
        if (visits.ending(visit).isPresent()) {
            return new Ways(List.of(), Drives.By.CROW, 1);
        }
        int from = (held.begun(day) + FIVE - 1) / FIVE * FIVE;
        DaysHeld.Held all = held.with(Set.of(visit), day, from);
        List<HeldDay> days = somebodyRang(visit)
                ? Stream.concat(all.days().stream(), all.onCall().stream()).toList()
                : all.days();
        Optional<Insertions.Wanted> wanted = all.wanted().stream().findFirst();
        return new Ways(
                wanted.map(one -> Insertions.offers(days, one, all.roads(), WAYS))
                        .orElse(List.of()),
                all.roads().by(),
                wanted.map(Insertions.Wanted::people).orElse(1));
    }

    private boolean somebodyRang(UUID visit) {
        return visits.find(visit).filter(one -> one.kind() == VisitKind.CALL).isPresent();
    }

    public List<Insertions.Offer> offers(UUID visit, LocalDate day) {
        return ways(visit, day).offers();
    }

    /** Tells one way from any other, so that a yes is to what was shown. */
    public static int shown(Insertions.Offer offer) {
        return (offer.technician() + " " + offer.second() + " " + offer.starts() + " " + offer.moved()).hashCode()
                & Integer.MAX_VALUE;
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
                Stream.concat(Stream.of(offer.day()), Stream.ofNullable(offer.along()))
                        .flatMap(changed -> moves(changed, offer))
                        .toList());
        if (offer.second().isPresent() && seconds.of(visit).isPresent()) {
            seconds.give(visit, null);
        }
        appointments.give(
                visit,
                new Appointments.Slot(
                        offer.technician(), day, Minutes.time(offer.starts()), Minutes.time(offer.ends())),
                moving);
        offer.second().ifPresent(second -> seconds.give(visit, second));
        return offer;
    }

    private static Stream<DayChanges.Move> moves(HeldDay changed, Insertions.Offer offer) {
        return changed.held().stream()
                .filter(one ->
                        offer.moved().stream().anyMatch(moved -> moved.visit().equals(one.visit())))
                .map(one -> new DayChanges.Move(
                        one.visit(), changed.technician(), Minutes.time(one.starts()), Minutes.time(one.ends())));
    }
}
