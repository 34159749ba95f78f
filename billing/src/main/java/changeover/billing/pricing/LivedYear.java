package changeover.billing.pricing;

import changeover.billing.pricing.CostSpread.Past;
import changeover.billing.pricing.PlanYear.Part;
import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** One year of a plan lived by chance, again and again: its visits as past ones went, its parts as past visits gave them. */
final class LivedYear {

    /** A visit with its kinds of machine, the one with the most minutes first. */
    private record Planned(List<String> kinds, List<Integer> minutes, int people) {}

    private final List<Planned> visits = new ArrayList<>();
    private final PlanYear year;
    private final CostRates rates;
    private final Function<Part, Optional<Money>> costs;
    private final Currency currency;
    private final List<Past> past;
    private final Map<String, List<Past>> byKind = new HashMap<>();
    private final Map<String, List<BigDecimal>> given = new HashMap<>();
    private final SplittableRandom chance;
    private final Set<String> few = new TreeSet<>();

    LivedYear(
            PlanYear year,
            CostRates rates,
            Function<Part, Optional<Money>> costs,
            Currency currency,
            List<Past> past,
            long seed) {
        this.year = year;
        this.rates = rates;
        this.costs = costs;
        this.currency = currency;
        this.past = past;
        this.chance = new SplittableRandom(seed);
        year.visits().forEach(visit -> {
            List<String> kinds = visit.minutes().keySet().stream()
                    .sorted(Comparator.comparing((String kind) -> -visit.of(kind))
                            .thenComparing(Comparator.naturalOrder()))
                    .toList();
            kinds.forEach(this::learn);
            visits.add(new Planned(kinds, kinds.stream().map(visit::of).toList(), visit.people()));
        });
        year.parts()
                .forEach(part -> given.put(
                        part.kind(),
                        past.stream()
                                .flatMap(one -> Optional.ofNullable(one.parts().get(part.kind())).stream())
                                .toList()));
    }

    private void learn(String kind) {
        List<Past> like =
                past.stream().filter(one -> one.kinds().contains(kind)).toList();
        if (like.size() < CostSpread.ENOUGH) {
            few.add(kind);
        }
        byKind.put(kind, like.size() < CostSpread.ENOUGH ? past : like);
    }

    Set<String> few() {
        return few;
    }

    PlanCost once() {
        Integer each = rates.setUpMinutes();
        int tasks = 0;
        int setUp = 0;
        int trips = 0;
        int goings = 0;
        for (Planned visit : visits) {
            Past leads = drawn(visit.kinds().isEmpty() ? "" : visit.kinds().getFirst());
            setUp += leads.took(each == null ? 0 : visit.people() * each);
            for (int at = 0; at < visit.kinds().size(); at++) {
                Past as = at == 0 ? leads : drawn(visit.kinds().get(at));
                tasks += as.took(visit.minutes().get(at));
            }
            @Nullable Integer again = leads.returnMinutes();
            tasks += again == null ? 0 : again;
            trips += again == null ? 1 : 2;
            goings += visit.people() + (again == null ? 0 : 1);
        }
        return PlanCost.of(
                new PlanCost.Minutes(tasks, setUp, PlanCost.travel(rates.trip(), goings), year.readyMinutes()),
                trips,
                parts(),
                rates,
                List.of());
    }

    /** The kind with the most minutes goes as the visit drawn for it, each other kind as one of its own. */
    private Past drawn(String kind) {
        List<Past> like = byKind.getOrDefault(kind, past);
        return like.get(chance.nextInt(like.size()));
    }

    /** Each visit gives its share of the year's parts as some visit of the past did; without a past, just its share. */
    private Money parts() {
        Money sum = Money.zero(currency);
        for (Part part : year.parts()) {
            List<BigDecimal> shares = given.getOrDefault(part.kind(), List.of());
            BigDecimal quantity = part.quantity();
            if (!shares.isEmpty() && !visits.isEmpty()) {
                BigDecimal all = BigDecimal.ZERO;
                for (int visit = 0; visit < visits.size(); visit++) {
                    all = all.add(shares.get(chance.nextInt(shares.size())));
                }
                quantity = quantity.multiply(all).divide(BigDecimal.valueOf(visits.size()), 6, RoundingMode.HALF_UP);
            }
            BigDecimal used = quantity;
            sum = sum.plus(costs.apply(part).map(cost -> cost.times(used)).orElse(Money.zero(currency)));
        }
        return sum;
    }
}
