package changeover.billing.costs;

import changeover.billing.ledger.Earned;
import changeover.billing.ledger.EarnedOn;
import changeover.billing.pricing.Cause;
import changeover.billing.pricing.PlanCost;
import changeover.contracts.money.Money;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** What agreements earned by the end of a day against what their visits cost: which plans and which homes lose money. */
@ApplicationScoped
public class PlanResults {

    @Inject
    Earned earned;

    @Inject
    KeptVisits kept;

    @Inject
    CostBooks books;

    /** Over which days. */
    public enum Over {
        /** The term that holds on the day, from its first day. */
        TERM,
        /** The calendar year of the day, from its first day. */
        YEAR
    }

    public Results on(LocalDate day, Over over) {
        EarnedOn on = earned.on(day);
        Map<UUID, EarnedOn.Plan> byAgreement = new HashMap<>();
        on.plans().forEach(plan -> byAgreement.put(plan.agreementId(), plan));
        KeptVisits.Kept all = over == Over.YEAR ? kept.between(day.withDayOfYear(1), day) : kept.ofTerms(day);
        Map<UUID, List<KeptVisit>> visits = new HashMap<>();
        all.visits()
                .forEach(visit -> visits.computeIfAbsent(visit.deal().agreementId(), _ -> new ArrayList<>())
                        .add(visit));
        CostBook book = books.read();
        Money nought = Money.zero(book.currency());
        List<DealResult> results = new ArrayList<>();
        for (Deal deal : all.deals()) {
            EarnedOn.Plan plan = byAgreement.get(deal.agreementId());
            Money gained = plan == null
                    ? nought
                    : over == Over.YEAR ? plan.earned().year() : plan.earned().ever();
            List<KeptVisit> made = visits.getOrDefault(deal.agreementId(), List.of());
            boolean asked = over == Over.YEAR ? !gained.isZero() || !made.isEmpty() : deal.holds(day);
            if (asked) {
                results.add(result(deal, gained, made, book));
            }
        }
        return new Results(day, over, book.currency(), results);
    }

    private static DealResult result(Deal deal, Money gained, List<KeptVisit> visits, CostBook book) {
        Map<Cause, Money> causes = new EnumMap<>(Cause.class);
        Set<PlanCost.Missing> missing = new LinkedHashSet<>();
        for (KeptVisit visit : visits) {
            PlanCost cost = visit.cost(book);
            cost.causes().forEach((cause, amount) -> causes.merge(cause, amount, Money::plus));
            missing.addAll(cost.missing());
        }
        return new DealResult(
                deal, gained, causes, Money.sum(causes.values(), book.currency()), List.copyOf(missing), visits.size());
    }
}
