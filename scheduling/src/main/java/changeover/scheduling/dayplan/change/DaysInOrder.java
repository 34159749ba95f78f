package changeover.scheduling.dayplan.change;

import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.InsertedRoutes;
import changeover.scheduling.dayplan.routes.Routes;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The days of the current business's technicians in the order with the least road, each kept on a person's yes. */
@ApplicationScoped
public class DaysInOrder {

    /** Few homes: a quarter of a second finds the shortest road between them. */
    private static final Routes ROUTES = new InsertedRoutes(Duration.ofMillis(250));

    /**
     * A technician's day, and its better order.
     *
     * @param ordered empty where the hours that stay cannot all be driven to
     * @param before minutes on the road as it stands
     * @param roads how they were reckoned
     */
    public record Proposed(HeldDay day, Optional<Ordered> ordered, int before, Drives.By roads) {

        public boolean isBetter() {
            return ordered.stream()
                    .flatMap(one -> one.arrivals().stream())
                    .anyMatch(one -> !one.stays() && one.starts() != one.was());
        }

        /** Tells this order from any other, so that a yes is to what was shown; nought where none was found. */
        public int shown() {
            return ordered.map(DaysInOrder::shown).orElse(0);
        }
    }

    @Inject
    DaysHeld held;

    @Inject
    DayChanges changes;

    /** Of everybody who has a visit on the day. */
    public List<Proposed> on(LocalDate day) {
        DaysHeld.Held all = held.on(day, held.begun(day));
        return all.days().stream()
                .filter(one -> !one.held().isEmpty())
                .map(one -> new Proposed(
                        one,
                        Ordered.of(one, all.roads(), ROUTES),
                        one.road(all.roads()),
                        all.roads().by()))
                .toList();
    }

    /**
     * The order is found anew, and refused where it is no longer what was shown.
     *
     * @return the hours that moved
     */
    public List<DayChanges.Move> keep(LocalDate day, UUID technician, int shown) {
        DaysHeld.Held all = held.on(day, held.begun(day));
        Ordered ordered = all.of(technician)
                .flatMap(one -> Ordered.of(one, all.roads(), ROUTES))
                .filter(one -> shown(one) == shown)
                .orElseThrow(() -> Refusal.of("day-order.changed").thrown());
        List<DayChanges.Move> moves = ordered.arrivals().stream()
                .filter(one -> !one.stays() && one.starts() != one.was())
                .map(one -> new DayChanges.Move(
                        one.visit(), technician, Minutes.time(one.starts()), Minutes.time(one.ends())))
                .toList();
        changes.move(day, moves);
        return moves;
    }

    private static int shown(Ordered ordered) {
        return ordered.arrivals().stream()
                        .map(one -> one.visit() + " " + one.starts())
                        .toList()
                        .hashCode()
                & Integer.MAX_VALUE;
    }
}
