package changeover.billing.costs;

import changeover.billing.pricing.Cause;
import changeover.billing.pricing.Margin;
import changeover.billing.pricing.PlanCost;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Currency;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What agreements earned and cost by the end of a day; a plan's figures are the sums of its agreements'. */
public record Results(LocalDate day, PlanResults.Over over, Currency currency, List<DealResult> deals) {

    public Results {
        deals = List.copyOf(deals);
    }

    /** The agreements of one plan together. */
    public record OfPlan(UUID planId, Wording plan, List<DealResult> deals, Currency currency) {

        public Money earned() {
            return sum(deals, DealResult::earned, currency);
        }

        public Money cost() {
            return sum(deals, DealResult::cost, currency);
        }

        public Money left() {
            return earned().minus(cost());
        }

        public Optional<BigDecimal> margin() {
            return Margin.of(earned(), cost());
        }

        public int losing() {
            return (int) deals.stream().filter(DealResult::loses).count();
        }
    }

    /** What loses most comes first. */
    public List<OfPlan> byPlan() {
        Map<UUID, List<DealResult>> plans = deals.stream()
                .collect(Collectors.groupingBy(one -> one.deal().planId(), LinkedHashMap::new, Collectors.toList()));
        return plans.entrySet().stream()
                .map(plan -> new OfPlan(
                        plan.getKey(), plan.getValue().getLast().deal().plan(), plan.getValue(), currency))
                .sorted(Comparator.comparing(OfPlan::left))
                .toList();
    }

    /** One plan's agreements, or all of them, what loses most first. */
    public List<DealResult> worstFirst(Optional<UUID> plan) {
        return deals.stream()
                .filter(one -> plan.isEmpty() || plan.get().equals(one.deal().planId()))
                .sorted(Comparator.comparing(DealResult::left)
                        .thenComparing(one -> one.deal().number()))
                .toList();
    }

    /** The visits that the cost is the sum of, in the order of their days: all, one plan's, or one agreement's. */
    public List<VisitCost> kept(Optional<UUID> plan, Optional<UUID> agreement) {
        return deals.stream()
                .filter(one -> plan.isEmpty() || plan.get().equals(one.deal().planId()))
                .filter(one ->
                        agreement.isEmpty() || agreement.get().equals(one.deal().agreementId()))
                .flatMap(one -> one.kept().stream())
                .sorted(Comparator.comparing((VisitCost one) -> one.visit().day())
                        .thenComparing(one -> one.visit().visitId()))
                .toList();
    }

    public Map<Cause, Money> causes() {
        Map<Cause, Money> causes = new EnumMap<>(Cause.class);
        deals.forEach(one -> one.causes().forEach((cause, amount) -> causes.merge(cause, amount, Money::plus)));
        return causes;
    }

    public List<PlanCost.Missing> missing() {
        return deals.stream().flatMap(one -> one.missing().stream()).distinct().toList();
    }

    public Money earned() {
        return sum(deals, DealResult::earned, currency);
    }

    public Money cost() {
        return sum(deals, DealResult::cost, currency);
    }

    private static Money sum(List<DealResult> deals, Function<DealResult, Money> of, Currency currency) {
        return Money.sum(deals.stream().map(of).toList(), currency);
    }
}
