package changeover.web;

import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.Offers;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.agreements.Yes;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Hazard;
import changeover.contracts.customers.Hazards;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A home with machines, a plan sold seven months ago, one closed visit, a dog and a code: for the tests of pages. */
@ApplicationScoped
public class ALivedInHome {

    @Inject
    AShop shops;

    @Inject
    Customers customers;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    AllEquipment equipment;

    @Inject
    AccessCodes codes;

    @Inject
    Hazards hazards;

    @Inject
    Plans plans;

    @Inject
    Offers offers;

    @Inject
    Agreements agreements;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    /** The home, who lives there and one of its machines. */
    public record Lived(UUID home, UUID customer, UUID filter) {}

    /** A home with a pump, a filter slot, a humidifier, an exchanger and a pan, and nothing promised. */
    public Lived machines(AShop.Shop shop, String language) {
        return shops.in(shop, () -> {
            LocalDate opened = LocalDate.of(2025, 1, 6);
            Customer customer =
                    customers.add(Customer.Facts.of("Adèle Fournier-Blake", language, "555-0148", "adele@example.com"));
            Home home = homes.add(new Home.Facts(
                    null,
                    null,
                    "14 Larch Street",
                    "Port Ambrose",
                    "ON",
                    "K0A 1A0",
                    "CA",
                    null,
                    null,
                    "residential",
                    1968,
                    "Side door, the key is with the neighbour at 16. Furnace room down the stairs to the left.",
                    false));
            parts.beginAll(home.id(), customer.id(), opened);
            machine(
                    home,
                    "outdoor-heat-pump",
                    "Heat pump",
                    "Norrland",
                    "NX-36",
                    Map.of("drive", "inverter"),
                    Map.of("volts", "240", "compressor-amps", "16.7", "refrigerant", "R-410A", "charge", "3.2"));
            machine(
                    home,
                    "air-handler",
                    "Air handler",
                    "Norrland",
                    "AH-15",
                    Map.of(),
                    Map.of("banks", "3", "bank-kw", "5", "volts", "240"));
            Equipment filter = machine(
                    home,
                    "filter-slot",
                    "Filter slot",
                    null,
                    null,
                    Map.of("size", "16x25", "thickness", "4", "direction", "right", "merv", "11"),
                    Map.of());
            machine(
                    home,
                    "condensate",
                    "Pan, trap and drain",
                    null,
                    null,
                    Map.of("pump", "no", "float-switch", "yes", "drain-size", "3/4"),
                    Map.of());
            machine(
                    home,
                    "humidifier-bypass",
                    "Humidifier",
                    null,
                    null,
                    Map.of("pad", "WP-112", "damper", "manual"),
                    Map.of());
            machine(
                    home,
                    "hrv",
                    "Exchanger",
                    "Fenwind",
                    "R200",
                    Map.of(
                            "core",
                            "RX-20",
                            "core-mark",
                            "arrow up, label to the door",
                            "filters",
                            "two, washable",
                            "hoods",
                            "ground"),
                    Map.of("supply-flow", "45", "exhaust-flow", "45"));
            codes.add(home.id(), "code", "side door", "2468");
            hazards.add(Hazard.seen(home.id(), "dog", "In the yard: call from the truck.", "en", opened));
            return new Lived(home.id(), customer.id(), filter.id());
        });
    }

    private Equipment machine(
            Home home,
            String kind,
            String name,
            String make,
            String model,
            Map<String, String> fits,
            Map<String, String> plate) {
        return equipment.addToHome(
                home.id(),
                new Equipment.Facts(
                        null,
                        kind,
                        name,
                        make,
                        model,
                        make == null ? null : "SN-" + kind.length() + "-00817",
                        null,
                        LocalDate.of(2021, 6, 3),
                        null,
                        LocalDate.of(2031, 6, 3),
                        null,
                        null,
                        fits,
                        plate));
    }

    /** The same home with a plan of two visits, the first of them closed. */
    public Lived sold(AShop.Shop shop, String language) {
        Lived lived = machines(shop, language);
        LocalDate began = shops.in(shop, () -> today.day().minusMonths(7).withDayOfMonth(5));
        shops.in(shop, () -> {
            Plan plan = plans.draft(new PlanFacts(
                    "two-turns",
                    new Wording("Two Turns", "Deux passages"),
                    2,
                    Money.of("389.00", "CAD"),
                    BigDecimal.TEN,
                    1,
                    0,
                    false,
                    Catalogue.shipped().tasks().stream()
                            .filter(task -> task.cadence().json().contains("each-season")
                                    || task.cadence().json().contains("before-season")
                                    || task.cadence().json().contains("check-then-replace"))
                            .map(task -> new PlanFacts.Promise(task.code(), null))
                            .toList(),
                    List.of(),
                    List.of()));
            plan.putOnSale(LocalDate.of(2026, 1, 5));
            plans.keep();
            Agreement agreement = agreements.offer(offers.forHome(lived.home(), plan.id(), began, began));
            agreements.accept(agreement.id(), new Yes("Adèle Fournier-Blake", began, SaleChannel.COUNTER, false));
            return agreement.id();
        });
        shops.in(shop, () -> {
            List<Visit> year = rows.createQuery("from Visit where homeId = :home order by windowFrom, id", Visit.class)
                    .setParameter("home", lived.home())
                    .getResultList();
            LocalDate day = began.plusDays(40);
            appointments.give(
                    year.getFirst().id(), new Appointments.Slot(shop.technician(), day, LocalTime.of(8, 0), null));
            visits.close(year.getFirst().id(), day);
            appointments.give(
                    year.getLast().id(),
                    new Appointments.Slot(shop.technician(), today.day().plusDays(8), LocalTime.of(10, 30), null));
            return year.size();
        });
        return lived;
    }
}
