package changeover.contracts.agreements;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.customers.PartInHome;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What can be offered today: a plan on sale, in its facts of today, for the machines that stand in a home and the people
 * who sign and pay for it. Nothing is stored here; {@link Agreements#offer} does.
 */
@ApplicationScoped
public class Offers {

    /** An offer stands for thirty days unless it says otherwise. */
    public static final int STANDS_FOR_DAYS = 30;

    @Inject
    Plans plans;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    Customers customers;

    @Inject
    AllEquipment equipment;

    @Inject
    OwnCatalogue trade;

    @Inject
    Agreements agreements;

    /** One home's offer to be: the first day of its term, and the agreement it renews, if any. */
    private record Wanted(
            UUID homeId, LocalDate from, @Nullable UUID renewsId) {}

    /**
     * A year of a plan for a home.
     *
     * @param from first day of the term
     * @param day today
     */
    public Offer forHome(UUID homeId, UUID planId, LocalDate from, LocalDate day) {
        Plan plan = plans.find(planId)
                .orElseThrow(
                        () -> Refusal.of("agreement.plan-unknown").at("plan").thrown());
        return offers(plan, List.of(new Wanted(homeId, from, null)), day, day.plusDays(STANDS_FOR_DAYS))
                .getFirst();
    }

    /** The next year of an agreement, by its plan as it is sold today; the offer stands until the last day of the old term. */
    public Offer renewal(UUID agreementId, LocalDate day) {
        return renewals(List.of(agreementId), day).getFirst();
    }

    /** The next year of many agreements, as {@link #renewal}. */
    public List<Offer> renewals(Collection<UUID> agreementIds, LocalDate day) {
        var offers = new ArrayList<Offer>();
        agreements.all(agreementIds).stream()
                .collect(Collectors.groupingBy(Agreement::planId))
                .forEach((planId, renewed) ->
                        offers.addAll(renewals(plans.find(planId).orElseThrow(), renewed, day)));
        return List.copyOf(offers);
    }

    private List<Offer> renewals(Plan plan, List<Agreement> renewed, LocalDate day) {
        var offers = new ArrayList<Offer>();
        renewed.stream()
                .collect(Collectors.groupingBy(agreement -> agreement.term().last()))
                .forEach((last, together) -> offers.addAll(offers(
                        plan,
                        together.stream()
                                .map(old -> new Wanted(old.homeId(), old.term().until(), old.id()))
                                .toList(),
                        day,
                        last.isBefore(day) ? day.plusDays(STANDS_FOR_DAYS) : last)));
        return offers;
    }

    private List<Offer> offers(Plan plan, List<Wanted> wanted, LocalDate day, LocalDate validUntil) {
        if (!plan.isOnSale(day)) {
            throw Refusal.of("agreement.plan-not-on-sale", Map.of("plan", plan.name()))
                    .at("plan")
                    .thrown();
        }
        return made(plan, wanted, day, validUntil, false);
    }

    /**
     * What runs in these homes already, by the plan as it is written today, from each one's own first day: it may be on sale
     * no more, and promise nothing for what stands there.
     */
    List<Offer> inForce(Plan plan, Map<UUID, LocalDate> from, LocalDate day) {
        List<Wanted> running = from.entrySet().stream()
                .map(one -> new Wanted(one.getKey(), one.getValue(), null))
                .toList();
        return made(plan, running, day, day, true);
    }

    private List<Offer> made(
            Plan plan, List<Wanted> wanted, LocalDate day, LocalDate validUntil, boolean mayPromiseNothing) {
        List<UUID> homeIds = wanted.stream().map(Wanted::homeId).toList();
        Map<UUID, Home> found = homes.all(homeIds).stream().collect(Collectors.toMap(Home::id, Function.identity()));
        Map<UUID, UUID> signers = parts.customers(homeIds, PartInHome.SIGNS, day);
        Map<UUID, UUID> payers = parts.customers(homeIds, PartInHome.PAYS, day);
        Map<UUID, String> languages =
                customers.all(signers.values()).stream().collect(Collectors.toMap(Customer::id, Customer::language));
        Map<UUID, List<PlanForHome.Unit>> units = equipment.ofHomes(homeIds).stream()
                .collect(Collectors.groupingBy(
                        unit -> unit.homeId().orElseThrow(), Collectors.mapping(Offers::unit, Collectors.toList())));
        PlanFacts facts = plan.facts();
        OwnCatalogue.Own own = trade.read();
        var offers = new ArrayList<Offer>();
        for (Wanted one : wanted) {
            Home home = found.get(one.homeId());
            if (home == null) {
                throw Refusal.of("agreement.home-unknown").at("home").thrown();
            }
            UUID signer = signers.get(home.id());
            if (signer == null) {
                throw Refusal.of("agreement.nobody-signs", Map.of("home", home.line(), "day", DayInWords.of(day)))
                        .at("home")
                        .thrown();
            }
            List<PlanForHome.Unit> machines = units.getOrDefault(home.id(), List.of());
            offers.add(new Offer(
                    home.id(),
                    signer,
                    payers.getOrDefault(home.id(), signer),
                    plan.id(),
                    facts,
                    Term.ofYear(one.from()),
                    facts.priceFor(machines.stream().map(PlanForHome.Unit::kind).toList()),
                    languages.getOrDefault(signer, "en"),
                    day,
                    validUntil,
                    one.renewsId(),
                    machines.stream().map(PlanForHome.Unit::id).toList(),
                    mayPromiseNothing
                            ? PlanForHome.promises(facts, machines, own.catalogue(), own.intervals())
                            : promises(home, facts, machines, own),
                    facts.parts().stream()
                            .map(part -> new Offer.Part(part.partKind(), part.quantityAYear()))
                            .toList()));
        }
        return offers;
    }

    private static List<Offer.Promised> promises(
            Home home, PlanFacts facts, List<PlanForHome.Unit> machines, OwnCatalogue.Own own) {
        List<Offer.Promised> promises = PlanForHome.promises(facts, machines, own.catalogue(), own.intervals());
        if (promises.isEmpty() && !home.toBeRead()) {
            throw Refusal.of("agreement.nothing-to-keep", Map.of("plan", facts.name(), "home", home.line()))
                    .at("plan")
                    .thrown();
        }
        return promises;
    }

    static PlanForHome.Unit unit(Equipment machine) {
        return new PlanForHome.Unit(machine.id(), machine.kind(), machine.fits());
    }
}
