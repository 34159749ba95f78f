package changeover.scheduling.dayplan.change;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.GivenOrders;
import changeover.scheduling.dayplan.routes.SolvedRoutes;
import changeover.scheduling.dayplan.season.Roads;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A day to come laid over everybody who works then, by the solver, and kept on a person's yes. */
@ApplicationScoped
public class CrewsDay {

    private static final Duration SEARCH = Duration.ofSeconds(2);

    /**
     * @param ordered empty where the hours that stay cannot all be driven to, or something would be left out
     * @param before minutes on the road as it stands
     * @param roads how they were reckoned
     */
    public record Proposed(Optional<CrewOrdered> ordered, int before, Drives.By roads) {

        /** With less road, or with what the day's own hours ask for. */
        public boolean isBetter() {
            return ordered.filter(one -> one.road() < before && !one.moved().isEmpty())
                    .isPresent();
        }
    }

    @Inject
    DaysHeld held;

    @Inject
    DayChanges changes;

    @Inject
    Today today;

    /** A day that has begun is ordered technician by technician. */
    public boolean isOpen(LocalDate day) {
        return day.isAfter(today.day());
    }

    /** The day as it stands, which is all that the search reads. */
    public record Question(List<HeldDay> crew, Roads roads, boolean open) {

        public Question {
            crew = List.copyOf(crew);
        }
    }

    /** In a transaction. */
    public Question ask(LocalDate day) {
        DaysHeld.Held all = held.on(day, held.begun(day));
        return new Question(all.days(), all.roads(), isOpen(day));
    }

    /** Takes as long as the search: outside every transaction. */
    public Proposed search(Question asked) {
        boolean nothing =
                !asked.open || asked.crew.stream().allMatch(one -> one.held().isEmpty());
        return new Proposed(
                nothing ? Optional.empty() : CrewOrdered.of(asked.crew, asked.roads, new SolvedRoutes(SEARCH)),
                asked.crew.stream().mapToInt(one -> one.road(asked.roads)).sum(),
                asked.roads.by());
    }

    /**
     * What was shown is reckoned anew over the day as it stands now, and refused where it is not the same any more.
     *
     * @param order the text of the orders that were shown
     * @param shown the road that was shown, in minutes
     * @return how many visits move
     */
    public int keep(LocalDate day, String order, int shown) {
        DaysHeld.Held all = held.on(day, held.begun(day));
        CrewOrdered ordered = orders(order)
                .filter(_ -> isOpen(day))
                .flatMap(given -> CrewOrdered.of(all.days(), all.roads(), given))
                .filter(one -> one.road() == shown)
                .orElseThrow(() -> Refusal.of("day-order.changed").thrown());
        List<DayChanges.Move> moves = ordered.moved().entrySet().stream()
                .flatMap(theirs -> theirs.getValue().stream()
                        .map(one -> new DayChanges.Move(
                                one.visit(), theirs.getKey(), Minutes.time(one.starts()), Minutes.time(one.ends()))))
                .toList();
        changes.move(day, moves);
        return moves.size();
    }

    private static Optional<GivenOrders> orders(String text) {
        try {
            return Optional.of(GivenOrders.read(text));
        } catch (IllegalArgumentException noOrder) {
            return Optional.empty();
        }
    }
}
