package changeover.billing.costs;

import changeover.billing.pricing.CostRates;
import changeover.billing.pricing.PlanCost;
import changeover.billing.pricing.PlanYear;
import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Somebody went to a home for an agreement, or gave there what it gives: the minutes it took, the parts that stayed.
 *
 * @param visitId of what was given between visits the id of its own row
 * @param answers the visit that this one comes again for, or null
 * @param technicianId who closed it, and {@code second} who went along
 * @param needed how many people it was planned for
 * @param planned minutes of its tasks, without set-up, those of each person that it needed
 * @param actual minutes on site on what was promised, of a return all of them, those of each who was there
 * @param given minutes of other work that the agreement gave
 * @param kinds planned minutes by kind of machine
 * @param partner what a partner asked for making it, instead of our minutes and trip; null where we made it
 */
public record KeptVisit(
        UUID visitId,
        How how,
        @Nullable UUID answers,
        Deal deal,
        CostBook.@Nullable Spot home,
        @Nullable UUID technicianId,
        String technician,
        @Nullable Second second,
        LocalDate day,
        int needed,
        int planned,
        int actual,
        int given,
        Map<String, Integer> kinds,
        List<Given> parts,
        @Nullable Money partner) {

    /** Why somebody went. */
    public enum How {
        PLANNED,
        /** Again, without charge. */
        RETURN,
        /** Nobody let us in: the trip was for nothing. */
        NO_ACCESS,
        /** A visit that is paid for by itself, at which the agreement gave minutes or parts. */
        BESIDE,
        /** Nobody went: parts were left at the door or posted. */
        SENT
    }

    public record Second(UUID id, String name) {}

    /** @param kind of part as the agreement names it; empty for what a return gives */
    public record Given(String code, String kind, BigDecimal quantity) {

        Given share(long visits) {
            return new Given(code, kind, quantity.divide(BigDecimal.valueOf(visits), 6, RoundingMode.HALF_UP));
        }
    }

    public KeptVisit {
        kinds = Map.copyOf(kinds);
        parts = List.copyOf(parts);
    }

    /** Nobody went: so much of a part was left at the home or posted to it. */
    static KeptVisit sent(UUID id, Deal deal, LocalDate day, Given part) {
        return new KeptVisit(
                id, How.SENT, null, deal, null, null, "", null, day, 0, 0, 0, 0, Map.of(), List.of(part), null);
    }

    public int people() {
        return second == null ? 1 : 2;
    }

    /** Somebody stood at the door. */
    public boolean isTrip() {
        return how != How.SENT;
    }

    /** The same as whoever went along made it. */
    KeptVisit by(Second other) {
        return new KeptVisit(
                visitId,
                how,
                answers,
                deal,
                home,
                other.id(),
                other.name(),
                technicianId == null ? null : new Second(technicianId, technician),
                day,
                needed,
                planned,
                actual,
                given,
                kinds,
                parts,
                partner);
    }

    /** What it cost at the costs of its day. */
    public PlanCost cost(CostBook book) {
        CostRates rates = book.rates(day, home).onSite();
        int trips = how == How.BESIDE || how == How.SENT || partner != null ? 0 : 1;
        Money sum = Money.zero(book.currency());
        List<PlanCost.Missing> missing = new ArrayList<>();
        for (Given part : parts) {
            var one = book.part(part.code(), day);
            if (one.isEmpty()) {
                missing.add(new PlanCost.Missing(PlanCost.What.PART, part.code()));
            }
            sum = sum.plus(one.map(cost -> cost.times(part.quantity())).orElse(Money.zero(book.currency())));
        }
        PlanCost ours = PlanCost.of(
                new PlanCost.Minutes(actual, 0, PlanCost.travel(rates.trip(), trips * people()), given),
                trips,
                sum,
                rates,
                missing);
        return partner == null ? ours : ours.withWorkOfOthers(partner);
    }

    /** The minutes that were foreseen on site, set-up included; nought for whatever nobody foresaw, and for what a partner made. */
    public int foreseen(int setUpMinutes) {
        return how == How.PLANNED && partner == null ? planned + needed * setUpMinutes : 0;
    }

    /** What its share of the term's parts would cost, as much at each of the visits that are sold; empty while one's cost is missing. */
    Optional<Money> partsForeseen(CostBook book) {
        Money sum = Money.zero(book.currency());
        if (how == How.PLANNED) {
            for (Map.Entry<String, BigDecimal> part : deal.parts().entrySet()) {
                BigDecimal share = share(part.getValue());
                Optional<Money> one = book.part(new PlanYear.Part(part.getKey(), null, share), day);
                if (one.isEmpty()) {
                    return Optional.empty();
                }
                sum = sum.plus(one.get().times(share));
            }
        }
        return Optional.of(sum);
    }

    BigDecimal share(BigDecimal aTerm) {
        return aTerm.divide(BigDecimal.valueOf(Math.max(1, deal.visits())), 6, RoundingMode.HALF_UP);
    }
}
