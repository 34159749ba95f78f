package changeover.billing.costs;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * What a rise of all prices would bring when the agreements in force renew: of each agreement the percentage of its own price,
 * half-up to the cent. Who would then not renew is not foreseen.
 */
public record PriceRise(BigDecimal percent, List<OfPlan> plans) {

    public record OfPlan(UUID planId, Wording plan, int agreements, Money now, Money rise) {}

    public static PriceRise of(Collection<Deal> deals, LocalDate day, BigDecimal percent, Currency currency) {
        Map<UUID, List<Deal>> plans = deals.stream()
                .filter(deal -> deal.holds(day))
                .collect(Collectors.groupingBy(Deal::planId, LinkedHashMap::new, Collectors.toList()));
        return new PriceRise(
                percent,
                plans.entrySet().stream()
                        .map(plan -> ofPlan(plan.getKey(), plan.getValue(), percent, currency))
                        .sorted(Comparator.comparing(OfPlan::now).reversed())
                        .toList());
    }

    private static OfPlan ofPlan(UUID id, List<Deal> deals, BigDecimal percent, Currency currency) {
        List<Money> prices = deals.stream()
                .map(deal -> new Money(deal.priceMinor(), currency))
                .toList();
        return new OfPlan(
                id,
                deals.getLast().plan(),
                deals.size(),
                Money.sum(prices, currency),
                Money.sum(prices.stream().map(price -> price.percent(percent)).toList(), currency));
    }

    public Money now(Currency currency) {
        return Money.sum(plans.stream().map(OfPlan::now).toList(), currency);
    }

    public Money rise(Currency currency) {
        return Money.sum(plans.stream().map(OfPlan::rise).toList(), currency);
    }
}
