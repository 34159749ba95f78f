package changeover.billing.pricing;

import changeover.billing.pricing.PlanYear.Part;
import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a year of a plan costs the business to keep in one home, cause by cause. A cost that nobody wrote down is named as
 * missing and never counts as nought: then the sum is what is known, and there is no price to ask.
 *
 * <p>Two at a visit cost twice the minutes, those of the road too. A trip that the price book prices is one, however many sit in the
 * van.
 *
 * <p>Each cause is rounded half-up to the cent once, and the cost is their sum.
 */
public record PlanCost(Map<Cause, Money> causes, List<Missing> missing, Minutes minutes, int trips, Currency currency) {

    /** What is not written down. */
    public enum What {
        HOUR,
        SET_UP,
        TRIP,
        PART,
        OVERHEAD
    }

    /** @param part the kind of a part whose cost is missing, and its size where one is known; empty for the rest */
    public record Missing(What what, String part) {}

    /** @param travel null where a trip is not reckoned by its minutes */
    public record Minutes(int tasks, int setUp, @Nullable Integer travel, int ready) {

        public int all() {
            return tasks + setUp + (travel == null ? 0 : travel) + ready;
        }
    }

    public PlanCost {
        causes = new EnumMap<>(causes);
        missing = List.copyOf(missing);
    }

    /** @param costs of one of a part on the day; empty where nobody wrote it down */
    public static PlanCost of(
            PlanYear year, CostRates rates, Function<Part, Optional<Money>> costs, Currency currency) {
        List<Missing> missing = new ArrayList<>();
        Money parts = Money.zero(currency);
        for (Part part : year.parts()) {
            Optional<Money> one = costs.apply(part);
            if (one.isEmpty()) {
                missing.add(
                        new Missing(What.PART, part.size() == null ? part.kind() : part.kind() + " " + part.size()));
            }
            parts = parts.plus(one.map(cost -> cost.times(part.quantity())).orElse(Money.zero(currency)));
        }
        Integer setUp = rates.setUpMinutes();
        int atEach = setUp == null ? 0 : setUp;
        int goings = year.goings();
        return of(
                new Minutes(
                        year.taskMinutes(),
                        Math.multiplyExact(goings, atEach),
                        travel(rates.trip(), goings),
                        year.readyMinutes()),
                year.trips(),
                parts,
                rates,
                missing);
    }

    /**
     * The same for minutes and trips that are known already.
     *
     * @param trips however many went on each
     * @param known what is missing of the parts
     */
    public static PlanCost of(Minutes minutes, int trips, Money parts, CostRates rates, List<Missing> known) {
        Currency currency = parts.currency();
        List<Missing> missing = new ArrayList<>();
        if (rates.hour() == null && minutes.all() > 0) {
            missing.add(new Missing(What.HOUR, ""));
        }
        if (rates.setUpMinutes() == null && trips > 0) {
            missing.add(new Missing(What.SET_UP, ""));
        }
        if (rates.trip() instanceof Trip.Unknown && trips > 0) {
            missing.add(new Missing(What.TRIP, ""));
        }
        missing.addAll(known);
        Money hour = rates.hour() == null ? Money.zero(currency) : rates.hour();
        Map<Cause, Money> causes = new EnumMap<>(Cause.class);
        causes.put(Cause.TASKS, hour.fraction(minutes.tasks(), 60));
        causes.put(Cause.SET_UP, hour.fraction(minutes.setUp(), 60));
        causes.put(Cause.TRAVEL, travel(rates.trip(), minutes, trips, hour));
        causes.put(Cause.PARTS, parts);
        causes.put(Cause.READY, hour.fraction(minutes.ready(), 60));
        Money before = Money.sum(causes.values(), currency);
        Overhead overhead = rates.overhead();
        if (overhead == null) {
            missing.add(new Missing(What.OVERHEAD, ""));
        }
        causes.put(Cause.OVERHEAD, overhead == null ? Money.zero(currency) : overhead.on(before, minutes.all()));
        return new PlanCost(causes, missing, minutes, trips, currency);
    }

    /** The same with what somebody else asked for work on the promised tasks. */
    public PlanCost withWorkOfOthers(Money price) {
        Map<Cause, Money> more = new EnumMap<>(causes);
        more.merge(Cause.TASKS, price, Money::plus);
        return new PlanCost(more, missing, minutes, trips, currency);
    }

    private static Money travel(Trip trip, Minutes minutes, int trips, Money hour) {
        Integer driven = minutes.travel();
        return switch (trip) {
            case Trip.Driven _ -> hour.fraction(driven == null ? 0 : driven, 60);
            case Trip.Priced(Money cost) -> cost.times(trips);
            case Trip.Unknown _ -> Money.zero(hour.currency());
        };
    }

    /**
     * What is driven in minutes; null where trips are not reckoned by minutes.
     *
     * @param goings trips of each person, two where two go
     */
    public static @Nullable Integer travel(Trip trip, int goings) {
        return trip instanceof Trip.Driven(int minutes) ? Math.multiplyExact(minutes, goings) : null;
    }

    public Money of(Cause cause) {
        return causes.getOrDefault(cause, Money.zero(currency));
    }

    /** What is known of the cost: all of it when nothing is missing. */
    public Money total() {
        return Money.sum(causes.values(), currency);
    }

    public boolean isWhole() {
        return missing.isEmpty();
    }

    /**
     * The price that leaves this part of itself; empty while a cost is missing.
     *
     * @param marginPercent of the price, below a hundred
     */
    public Optional<Money> priceFor(BigDecimal marginPercent) {
        return isWhole() ? Optional.of(Margin.price(total(), marginPercent)) : Optional.empty();
    }
}
