package changeover.billing.costs;

import changeover.billing.pricing.Margin;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a rise of all prices would bring when the agreements in force renew: of each agreement the percentage of its own price,
 * half-up to the cent; and what their terms would have left so far, had they earned so much more at the same cost. Who would
 * then not renew is not foreseen.
 *
 * @param deals those whose term holds on the day
 */
public record PriceRise(BigDecimal percent, Currency currency, List<OfDeal> deals) {

    public PriceRise {
        deals = List.copyOf(deals);
    }

    /** One agreement: its price, and what it earned and cost since its first day. */
    public record OfDeal(DealResult result, Money now, Money rise, Money more) {

        public Money earnedThen() {
            return result.earned().plus(more);
        }

        public Money leftThen() {
            return result.left().plus(more);
        }

        public boolean wouldLose() {
            return leftThen().isNegative();
        }
    }

    /** The agreements of one plan together. */
    public record OfPlan(UUID planId, Wording plan, Currency currency, List<OfDeal> deals) {

        public int agreements() {
            return deals.size();
        }

        public Money now() {
            return sum(deals, OfDeal::now, currency);
        }

        public Money rise() {
            return sum(deals, OfDeal::rise, currency);
        }

        public Optional<BigDecimal> margin() {
            return Margin.of(sum(deals, one -> one.result().earned(), currency), cost());
        }

        public Optional<BigDecimal> marginThen() {
            return Margin.of(sum(deals, OfDeal::earnedThen, currency), cost());
        }

        public int losing() {
            return (int) deals.stream().filter(one -> one.result().loses()).count();
        }

        public int wouldLose() {
            return (int) deals.stream().filter(OfDeal::wouldLose).count();
        }

        private Money cost() {
            return sum(deals, one -> one.result().cost(), currency);
        }
    }

    /** @param terms what the agreements in force earned and cost since their first day */
    public static PriceRise of(Results terms, BigDecimal percent) {
        return new PriceRise(
                percent,
                terms.currency(),
                terms.deals().stream()
                        .filter(one -> one.deal().holds(terms.day()))
                        .map(one -> ofDeal(one, percent, terms.currency()))
                        .toList());
    }

    private static OfDeal ofDeal(DealResult one, BigDecimal percent, Currency currency) {
        Money now = new Money(one.deal().priceMinor(), currency);
        return new OfDeal(one, now, now.percent(percent), one.earned().percent(percent));
    }

    /** The plan that brings in most comes first. */
    public List<OfPlan> plans() {
        Map<UUID, List<OfDeal>> plans = deals.stream()
                .collect(Collectors.groupingBy(
                        one -> one.result().deal().planId(), LinkedHashMap::new, Collectors.toList()));
        return plans.entrySet().stream()
                .map(plan -> new OfPlan(
                        plan.getKey(), plan.getValue().getLast().result().deal().plan(), currency, plan.getValue()))
                .sorted(Comparator.comparing(OfPlan::now).reversed())
                .toList();
    }

    /** One plan's agreements or all, only those that would lose money even then when that is asked; what loses most first. */
    public PriceRise listed(Optional<UUID> plan, boolean onlyLosing) {
        return new PriceRise(
                percent,
                currency,
                deals.stream()
                        .filter(one -> plan.isEmpty()
                                || plan.get().equals(one.result().deal().planId()))
                        .filter(one -> !onlyLosing || one.wouldLose())
                        .sorted(Comparator.comparing(OfDeal::leftThen)
                                .thenComparing(one -> one.result().deal().number()))
                        .toList());
    }

    public Money sum(Function<OfDeal, Money> of) {
        return sum(deals, of, currency);
    }

    private static Money sum(List<OfDeal> deals, Function<OfDeal, Money> of, Currency currency) {
        return Money.sum(deals.stream().map(of).toList(), currency);
    }
}
