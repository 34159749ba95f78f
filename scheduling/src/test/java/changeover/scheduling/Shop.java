package changeover.scheduling;

import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.Offers;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.agreements.Yes;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnKinds;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Place;
import changeover.contracts.tenants.Role;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;

/** A small invented business with tasks of its own, for the tests of this module. */
@ApplicationScoped
public class Shop {

    public static final LocalDate OPENED = LocalDate.of(2025, 1, 2);
    public static final UUID TECHNICIAN = new UUID(7, 7);

    private static final AtomicInteger COUNT = new AtomicInteger();

    @Inject
    OwnKinds kinds;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @Inject
    Customers customers;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    AllEquipment equipment;

    @Inject
    Plans plans;

    @Inject
    Offers offers;

    @Inject
    Agreements agreements;

    @Inject
    EntityManager rows;

    /** Opens a business with one technician. */
    public UUID open(String place) {
        UUID tenant = UUID.randomUUID();
        in(tenant, () -> {
            businesses.open(
                    new NewBusiness(
                            "shop-" + tenant.toString().substring(0, 12),
                            "Northlamp",
                            "1 Kiln Lane, Port Ambrose",
                            Place.of(place),
                            "en",
                            null,
                            null,
                            null,
                            null,
                            null,
                            true),
                    OPENED);
            people.add(Membership.begin(TECHNICIAN, "Ida Roe", "ida@example.com", "en", Role.TECHNICIAN));
            TASKS.forEach(this::own);
            for (String kind : List.of("test-pump", "test-humidifier", "test-filter", "test-furnace")) {
                kinds.add(new Kind(
                        kind, new Wording(kind, kind), List.of(fact("size")), List.of(fact("kw"), fact("volts"))));
            }
            return tenant;
        });
        return tenant;
    }

    public <T> T in(UUID tenant, Callable<T> work) {
        return current.run(tenant, CurrentTenant.NOBODY, work);
    }

    private static Fact fact(String name) {
        return new Fact(name, new Wording(name, name), Fact.Form.TEXT, null, List.of(), null);
    }

    private void own(Task task) {
        rows.createNativeQuery("insert into own_task (code, body) values (:code, cast(:body as jsonb))")
                .setParameter("code", task.code())
                .setParameter("body", CatalogueJson.write(task))
                .executeUpdate();
    }

    /** A home with a heat pump, a humidifier and a filter slot, whose owner does everything. */
    public UUID home(String region) {
        UUID home = bare(region, false);
        for (String kind : List.of("test-pump", "test-humidifier", "test-filter")) {
            equipment.addToHome(
                    home,
                    new Equipment.Facts(
                            null, kind, kind, null, null, null, null, null, null, null, null, null, Map.of(),
                            Map.of()));
        }
        return home;
    }

    /** A home whose machines are read at the first visit. */
    public UUID unread(String region) {
        return bare(region, true);
    }

    private UUID bare(String region, boolean toBeRead) {
        int number = COUNT.incrementAndGet();
        Customer customer =
                customers.add(Customer.Facts.of("Mara Quill " + number, "en", "555-0142", "mara@example.com"));
        Home home = homes.add(new Home.Facts(
                null,
                null,
                number + " Fen Road",
                "Port Ambrose",
                region,
                null,
                "CA",
                null,
                null,
                "residential",
                null,
                null,
                toBeRead));
        parts.beginAll(home.id(), customer.id(), OPENED);
        return home.id();
    }

    /** Two visits a year for 249.00: both changeovers, the humidifier, and the filter by the household. */
    public Plan plan() {
        Plan plan = plans.draft(new PlanFacts(
                "plan-" + COUNT.incrementAndGet(),
                new Wording("Comfort", "Confort"),
                2,
                Money.of("249.00", "CAD"),
                new BigDecimal("10.00"),
                1,
                0,
                false,
                TASKS.stream()
                        .map(task -> new PlanFacts.Promise(task.code(), null))
                        .toList(),
                List.of(),
                List.of()));
        plan.putOnSale(OPENED);
        plans.keep();
        return plan;
    }

    /** Offers and sells at the counter, on one day. */
    public UUID sell(UUID home, UUID plan, LocalDate day) {
        Agreement agreement = agreements.offer(offers.forHome(home, plan, day, day));
        agreements.accept(agreement.id(), yes(day, SaleChannel.COUNTER));
        return agreement.id();
    }

    public static Yes yes(LocalDate day, SaleChannel channel) {
        return new Yes("Mara Quill", day, channel, false);
    }

    private static final List<Task> TASKS = List.of(
            task("test-cool", "test-pump", Who.TECHNICIAN, 40, Cadence.EachSeason.of("cooling")),
            task("test-heat", "test-pump", Who.TECHNICIAN, 40, Cadence.EachSeason.of("heating")),
            task("test-pad", "test-humidifier", Who.TECHNICIAN, 25, Cadence.EachSeason.of("heating")),
            task("test-off", "test-humidifier", Who.TECHNICIAN, 10, Cadence.EachSeason.of("humidifier-off")),
            task("test-look", "test-filter", Who.HOUSEHOLD, 5, new Cadence.CheckThenReplace(1, 6)));

    private static Task task(String code, String kind, Who who, int minutes, Cadence cadence) {
        return new Task(
                code,
                List.of(kind),
                Map.of(),
                new Wording(code + " done", code + " fait"),
                who,
                TicketNeeded.NONE,
                minutes,
                cadence,
                null,
                List.of(),
                List.of(),
                null,
                Task.COMMON_PRACTICE,
                null);
    }
}
