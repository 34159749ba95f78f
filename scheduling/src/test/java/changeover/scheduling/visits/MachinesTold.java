package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.MachinesInAgreements;
import changeover.contracts.agreements.Offers;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.EquipmentRead;
import changeover.contracts.customers.Homes;
import changeover.contracts.plans.Plans;
import changeover.scheduling.Shop;
import changeover.scheduling.dayplan.Appointments;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What the tests of machines read after the sale share. */
class MachinesTold {

    static final LocalDate APRIL = LocalDate.of(2026, 4, 1);

    @Inject
    Shop shop;

    @Inject
    Homes homes;

    @Inject
    AllEquipment equipment;

    @Inject
    Plans plans;

    @Inject
    Agreements agreements;

    @Inject
    Offers offers;

    @Inject
    MachinesInAgreements machines;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    YearsOfHomes years;

    @Inject
    Event<EquipmentRead> read;

    @Inject
    EntityManager rows;

    /** What the home's years say in the end: visits, then what is not kept. */
    void check(List<Step> steps, String... expected) {
        UUID tenant = shop.open("CA-ON");
        List<String> said = shop.in(tenant, () -> {
            var told = new SoldHome(shop.unread("ON"), shop.plan().id());
            for (Step step : steps) {
                step.tell(told);
            }
            return said(told.home);
        });
        assertEquals(List.of(expected), said);
    }

    interface Step {
        void tell(SoldHome told) throws Exception;
    }

    record SoldHome(UUID home, UUID plan) {}

    List<String> said(UUID home) {
        YearOfHome year = years.of(home, new Window(APRIL, APRIL.plusYears(3)), APRIL);
        var said = new java.util.ArrayList<String>();
        year.visits().forEach(going -> said.add(SoldYearTest.said(going)));
        year.unkept()
                .forEach(one ->
                        said.add("not " + one.taskCode() + " by " + one.window().last()));
        return said;
    }

    Step sold(LocalDate day) {
        return told -> shop.sell(told.home, told.plan, day);
    }

    Step firstVisitMade(LocalDate day) {
        return told -> visits.close(first(told.home), day);
    }

    UUID first(UUID home) {
        return years.of(home, new Window(APRIL, APRIL.plusYears(2)), APRIL)
                .visits()
                .getFirst()
                .visitId();
    }

    Step found(String... kinds) {
        return told -> List.of(kinds).forEach(kind -> add(told.home, kind));
    }

    UUID add(UUID home, String kind) {
        return equipment
                .addToHome(
                        home,
                        new Equipment.Facts(
                                null, kind, kind, null, null, null, null, null, null, null, null, null, Map.of(),
                                Map.of()))
                .id();
    }

    Step read(LocalDate day) {
        return told -> homes.equipmentRead(told.home, day);
    }
}
