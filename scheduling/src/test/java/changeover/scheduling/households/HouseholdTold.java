package changeover.scheduling.households;

import changeover.contracts.catalogue.OwnIntervals;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.SettableClock;
import changeover.contracts.words.Wording;
import changeover.scheduling.Shop;
import changeover.scheduling.visits.HouseholdTasks;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;

/** A home with a filter slot, a head and a pump, and what its household tells: for the tests of its list. */
class HouseholdTold {

    static final LocalDate SOLD = LocalDate.of(2026, 1, 10);

    @Inject
    Shop shop;

    @Inject
    SettableClock clock;

    @Inject
    AllEquipment equipment;

    @Inject
    Plans plans;

    @Inject
    OwnIntervals intervals;

    @Inject
    HouseholdTasks tasks;

    @Inject
    FilterSlots slots;

    @Inject
    FilterLooks looks;

    @Inject
    SlotRhythms rhythms;

    @Inject
    HouseholdRounds rounds;

    @Inject
    AcceptedChance chance;

    @Inject
    EntityManager rows;

    @AfterEach
    void theRealDayAgain() {
        clock.reset();
    }

    record At(UUID tenant, UUID home, UUID slot) {}

    At open(String thickness) {
        clock.setDay(SOLD);
        UUID tenant = shop.open("CA-QC");
        return shop.in(tenant, () -> {
            UUID home = shop.home("QC");
            add(home, "ductless-head", Map.of());
            add(home, "outdoor-heat-pump", Map.of());
            UUID slot = add(home, "filter-slot", Map.of("thickness", thickness, "merv", "11", "size", "16x25"));
            shop.sell(home, plan(), SOLD);
            return new At(tenant, home, slot);
        });
    }

    UUID add(UUID home, String kind, Map<String, String> fits) {
        return equipment
                .addToHome(
                        home,
                        new Equipment.Facts(
                                null, kind, kind, null, null, null, null, null, null, null, null, null, fits, Map.of()))
                .id();
    }

    UUID plan() {
        Plan plan = plans.draft(new PlanFacts(
                "plan-" + UUID.randomUUID().toString().substring(0, 8),
                new Wording("Comfort", "Confort"),
                2,
                Money.of("249.00", "CAD"),
                new BigDecimal("10.00"),
                1,
                0,
                false,
                List.of("filter-thin", "filter-deep", "head-screens", "outdoor-clear").stream()
                        .map(code -> new PlanFacts.Promise(code, null))
                        .toList(),
                List.of(),
                List.of()));
        plan.putOnSale(Shop.OPENED);
        plans.keep();
        return plan.id();
    }

    void tell(At at, LocalDate day, String found, boolean changed) {
        clock.setDay(day);
        shop.in(at.tenant, () -> {
            FilterSlot slot = slots.find(at.slot).orElseThrow();
            looks.tell(slot, new FilterLooks.Telling(day, found, changed, "Mara Quill"), null);
            rounds.follow(List.of(slot));
            return 0;
        });
    }

    void done(At at, String code, LocalDate day) {
        clock.setDay(day);
        shop.in(at.tenant, () -> {
            UUID task =
                    (UUID) laid(at, code, day.minusMonths(1), day.plusMonths(1)).getFirst()[2];
            tasks.done(at.home, task, day, "Mara Quill");
            return 0;
        });
    }

    SlotRhythm rhythm(At at) {
        return shop.in(at.tenant, () -> rhythms.of(at.slot).orElseThrow());
    }

    List<String> ahead(At at, String code, int most) {
        List<String> all = said(at, code, SOLD);
        return all.subList(0, Math.min(most, all.size()));
    }

    List<String> after(At at, LocalDate day) {
        return said(at, "filter-deep", day.plusDays(1));
    }

    List<String> said(At at, String code, LocalDate from) {
        return shop.in(at.tenant, () -> laid(at, code, from, from.plusYears(1))).stream()
                .map(row -> row[0].toString().substring(5) + " " + row[1])
                .toList();
    }

    @SuppressWarnings("unchecked")
    List<Object[]> laid(At at, String code, LocalDate from, LocalDate until) {
        return rows.createNativeQuery("""
                        select due_on, act, id from household_task
                         where home_id = :home and task_code = :code and due_on >= :from and due_on < :until
                         order by due_on""", Object[].class)
                .setParameter("home", at.home)
                .setParameter("code", code)
                .setParameter("from", from)
                .setParameter("until", until)
                .getResultList();
    }
}
