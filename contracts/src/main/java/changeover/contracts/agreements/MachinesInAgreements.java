package changeover.contracts.agreements;

import changeover.contracts.agreements.MachinesTakenIn.TakenIn;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.ManyRows;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A machine that comes to be known after the sale is taken into what was sold: it is promised the plan's tasks as they
 * were sold, in every agreement of its home that has days left. The price that was agreed stays. Taken in once, a machine
 * is not taken in again.
 */
@ApplicationScoped
public class MachinesInAgreements {

    /** Agreements with days left, and offers that still stand; held until the end of the transaction. */
    private static final String WITH_DAYS_LEFT = """
            select a.id, a.home_id, a.plan_id, cast(a.sold_tasks as text) as sold_tasks,
              (select coalesce(max(p.position), -1) + 1 from agreement_promise p
                where p.tenant_id = a.tenant_id and p.agreement_id = a.id) as next
              from agreement a
             where a.tenant_id = current_tenant() and a.home_id in (:homes) and a.term_until > :day
               and not exists (select from agreement_ending e where e.tenant_id = a.tenant_id and e.agreement_id = a.id)
               and (a.valid_until >= :day or exists (
                     select from agreement_acceptance c where c.tenant_id = a.tenant_id and c.agreement_id = a.id))
             order by a.home_id, a.term_from, a.number for update of a
            """;

    private static final String MACHINES = """
            select agreement_id, equipment_id from agreement_unit
             where tenant_id = current_tenant() and agreement_id in (:agreements)
            """;

    @Inject
    EntityManager rows;

    @Inject
    AgroalDataSource datasource;

    @Inject
    AllEquipment equipment;

    @Inject
    Plans plans;

    @Inject
    OwnCatalogue trade;

    @Inject
    Event<MachinesTakenIn> takenIn;

    /** Takes in all that stands in these homes. */
    void takeIn(Collection<UUID> homes, LocalDate day) {
        takeIn(homes, day, _ -> true);
    }

    /**
     * Takes one machine in that came to its home in mid-term.
     *
     * @return whether there was an agreement that did not hold it yet
     */
    public boolean takeIn(UUID home, UUID machine, LocalDate day) {
        return takeIn(List.of(home), day, unit -> unit.id().equals(machine));
    }

    /** The machines of the home that no agreement in force on the day holds, though there is such an agreement. */
    public Set<UUID> leftOut(UUID home, LocalDate day) {
        return new HashSet<>(rows.createNativeQuery("""
                        select q.id from equipment q
                         where q.tenant_id = current_tenant() and q.home_id = :home and q.ended_on is null
                           and exists (
                             select from agreement a
                               join agreement_acceptance c on c.tenant_id = a.tenant_id and c.agreement_id = a.id
                              where a.tenant_id = q.tenant_id and a.home_id = q.home_id and a.term_until > :day
                                and not exists (select from agreement_ending e
                                       where e.tenant_id = a.tenant_id and e.agreement_id = a.id)
                                and not exists (select from agreement_unit u where u.tenant_id = a.tenant_id
                                       and u.agreement_id = a.id and u.equipment_id = q.id))
                        """, UUID.class)
                .setParameter("home", home)
                .setParameter("day", day)
                .getResultList());
    }

    private boolean takeIn(Collection<UUID> homes, LocalDate day, Predicate<Equipment> which) {
        rows.flush();
        List<Tuple> agreements = ask(rows.createNativeQuery(WITH_DAYS_LEFT, Tuple.class)
                .setParameter("homes", homes)
                .setParameter("day", day)
                .getResultList());
        if (agreements.isEmpty()) {
            return false;
        }
        Map<UUID, Set<UUID>> held = held(agreements);
        Map<UUID, List<Equipment>> standing = equipment.ofHomes(homes).stream()
                .filter(which)
                .collect(Collectors.groupingBy(unit -> unit.homeId().orElseThrow()));
        OwnCatalogue.Own own = trade.read();
        var units = ManyRows.into("agreement_unit", "agreement_id uuid, equipment_id uuid");
        var promises = OfferRows.promises();
        var grown = new ArrayList<TakenIn>();
        for (Tuple row : agreements) {
            UUID agreement = row.get("id", UUID.class);
            UUID home = row.get("home_id", UUID.class);
            Set<UUID> known = held.getOrDefault(agreement, Set.of());
            List<PlanForHome.Unit> missing = standing.getOrDefault(home, List.of()).stream()
                    .filter(unit -> !known.contains(unit.id()))
                    .map(Offers::unit)
                    .toList();
            if (!missing.isEmpty()) {
                missing.forEach(unit -> units.add(agreement, unit.id()));
                OfferRows.add(
                        promises,
                        agreement,
                        row.get("next", Integer.class),
                        PlanForHome.promises(sold(row), missing, own.catalogue(), own.intervals()));
                grown.add(new TakenIn(
                        agreement,
                        home,
                        day,
                        missing.stream().map(PlanForHome.Unit::id).toList()));
            }
        }
        store(units, promises);
        if (!grown.isEmpty()) {
            takenIn.fire(new MachinesTakenIn(grown));
        }
        return !grown.isEmpty();
    }

    private Map<UUID, Set<UUID>> held(List<Tuple> agreements) {
        Map<UUID, Set<UUID>> held = new HashMap<>();
        ask(rows.createNativeQuery(MACHINES, Tuple.class)
                        .setParameter(
                                "agreements",
                                agreements.stream()
                                        .map(row -> row.get("id", UUID.class))
                                        .toList())
                        .getResultList())
                .forEach(row -> held.computeIfAbsent(row.get(0, UUID.class), _ -> new HashSet<>())
                        .add(row.get(1, UUID.class)));
        return held;
    }

    private List<PlanFacts.Promise> sold(Tuple agreement) {
        String sold = agreement.get("sold_tasks", String.class);
        return sold == null
                ? plans.find(agreement.get("plan_id", UUID.class))
                        .map(Plan::facts)
                        .map(PlanFacts::tasks)
                        .orElseThrow()
                : SoldTasks.read(sold);
    }

    private void store(ManyRows units, ManyRows promises) {
        try (var connection = datasource.getConnection()) {
            units.store(connection);
            promises.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the promises of the machines could not be stored", cause);
        }
    }

    @SuppressWarnings("unchecked")
    private static List<Tuple> ask(List<?> rows) {
        return (List<Tuple>) Objects.requireNonNull(rows);
    }
}
