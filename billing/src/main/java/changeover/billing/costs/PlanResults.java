package changeover.billing.costs;

import changeover.billing.ledger.Earned;
import changeover.billing.ledger.EarnedOn;
import changeover.contracts.money.Money;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        book.know(all.visits().stream()
                .flatMap(visit -> Optional.ofNullable(visit.home()).stream())
                .toList());
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
        return new DealResult(
                deal,
                gained,
                visits.stream()
                        .map(visit -> new VisitCost(visit, visit.cost(book)))
                        .toList());
    }
}
