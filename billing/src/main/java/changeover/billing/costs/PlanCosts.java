package changeover.billing.costs;

import changeover.billing.pricing.CostRates;
import changeover.billing.pricing.CostSpread;
import changeover.billing.pricing.PlanCost;
import changeover.billing.pricing.PlanYear;
import changeover.contracts.agreements.Offer;
import changeover.contracts.agreements.PlanForHome;
import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.OwnCatalogue.Own;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
import changeover.contracts.plans.PlanFacts;
import changeover.scheduling.dayplan.Needs;
import changeover.scheduling.dayplan.TaskNeed;
import changeover.scheduling.visits.Machine;
import changeover.scheduling.visits.PromisedTask;
import changeover.scheduling.visits.Promises;
import changeover.scheduling.visits.VisitPlan;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a year of a plan costs to keep in a home, reckoned by the machines that stand there and the costs of the day. The home's
 * past is not asked: every interval counts from the first day of the term.
 */
@ApplicationScoped
public class PlanCosts {

    /** So many years are lived for a spread. */
    public static final int YEARS = 2_000;

    @Inject
    Homes homes;

    @Inject
    AllEquipment machines;

    @Inject
    OwnCatalogue trade;

    @Inject
    CostBooks books;

    @Inject
    KeptVisits kept;

    @Inject
    Needs needs;

    /**
     * @param price of the year for these machines, before tax
     * @param spread null where no closed visit is known, or a cost is missing
     * @param repairs whether the plan promises repairs without charge: what they cost is in no figure here
     */
    public record Reckoned(
            PlanCost cost,
            PlanYear year,
            Money price,
            @Nullable CostSpread spread,
            int unkept,
            boolean repairs) {}

    /** Empty when there is no such home. */
    public Optional<Reckoned> of(PlanFacts plan, UUID homeId, LocalDate day) {
        return reckoned(plan, homeId, day, null);
    }

    /** The same with its spread by the business's own closed visits up to the day. */
    public Optional<Reckoned> withSpread(PlanFacts plan, UUID homeId, LocalDate day, long seed) {
        return reckoned(plan, homeId, day, seed);
    }

    private Optional<Reckoned> reckoned(PlanFacts plan, UUID homeId, LocalDate day, @Nullable Long seed) {
        return homes.get(homeId).map(home -> {
            CostBook book = books.read();
            CostRates rates = book.rates(day, spot(home));
            List<Equipment> units = machines.ofHome(homeId);
            Own own = trade.read();
            VisitPlan laid = laid(plan, units, day, own);
            PlanYear year = PlanYear.of(
                    laid,
                    units.stream().map(PlanCosts::machine).toList(),
                    given(plan),
                    plan.includedMinutes(),
                    needTwo(),
                    own.catalogue());
            PlanCost cost = PlanCost.of(year, rates, part -> book.part(part, day), book.currency());
            return new Reckoned(
                    cost,
                    year,
                    plan.priceFor(units.stream().map(Equipment::kind).toList()),
                    seed == null || !cost.isWhole() ? null : spread(year, rates, book, day, seed),
                    laid.unkept().size(),
                    plan.coversRepairs());
        });
    }

    private @Nullable CostSpread spread(PlanYear year, CostRates rates, CostBook book, LocalDate day, long seed) {
        @Nullable Integer setUp = rates.setUpMinutes();
        List<CostSpread.Past> past = kept.past(day, setUp == null ? 0 : setUp);
        return past.isEmpty()
                ? null
                : CostSpread.of(year, rates, part -> book.part(part, day), book.currency(), past, YEARS, seed);
    }

    private Set<String> needTwo() {
        return needs.ofTasks().stream()
                .filter(one -> one.need().people() > 1)
                .map(TaskNeed::taskCode)
                .collect(Collectors.toSet());
    }

    private static CostBook.@Nullable Spot spot(Home home) {
        Home.Facts facts = home.facts();
        return CostBook.Spot.of(facts.latitude(), facts.longitude());
    }

    private static Machine machine(Equipment unit) {
        return new Machine(unit.id(), unit.kind(), unit.fits());
    }

    private static Map<String, BigDecimal> given(PlanFacts plan) {
        return plan.parts().stream()
                .collect(Collectors.toMap(PlanFacts.Included::partKind, PlanFacts.Included::quantityAYear));
    }

    private static VisitPlan laid(PlanFacts plan, List<Equipment> units, LocalDate day, Own own) {
        List<Offer.Promised> promised = PlanForHome.promises(
                plan,
                units.stream()
                        .map(unit -> new PlanForHome.Unit(unit.id(), unit.kind(), unit.fits()))
                        .toList(),
                own.catalogue(),
                own.intervals());
        List<PromisedTask> tasks = promised.stream()
                .map(one -> new PromisedTask(
                        Objects.requireNonNull(one.equipmentId()),
                        one.taskCode(),
                        one.who(),
                        one.minutes(),
                        one.cadence(),
                        own.catalogue().task(one.taskCode()).outdoorAtLeast() != null,
                        History.NONE))
                .toList();
        Term term = Term.ofYear(day);
        return VisitPlan.of(
                Promises.in(term, tasks, own.seasons()),
                plan.visits(),
                term,
                List.of(),
                own.seasons(),
                own.longestVisit());
    }
}
