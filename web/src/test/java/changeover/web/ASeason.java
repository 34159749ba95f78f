package changeover.web;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.ExampleRegister;
import changeover.contracts.Examples;
import changeover.contracts.calendar.Days;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Buildings;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Hazards;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.customers.PartInHome;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.SettableClock;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlaces;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** A shop that lives through a year day by day: what a season's story is told with. */
@ApplicationScoped
public class ASeason {

    static final String FILTER = "FIL-16254";
    static final String SWITCH = "FLO-3";

    @Inject
    AShop shops;

    @Inject
    SettableClock clock;

    @Inject
    Today today;

    @Inject
    Days days;

    @Inject
    Customers customers;

    @Inject
    Buildings buildings;

    @Inject
    Homes homes;

    @Inject
    HomeParts people;

    @Inject
    AllEquipment equipment;

    @Inject
    Hazards hazards;

    @Inject
    AccessCodes codes;

    @Inject
    Plans plans;

    @Inject
    Prices prices;

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    DocumentsToMake papers;

    /** Every day before this one passes, then it is this day. */
    void comes(AShop.Shop shop, LocalDate day) {
        clock.setDay(day);
        days.letPass(shop.tenant(), day.minusDays(1));
        papers.makePending(shop.tenant(), 50);
    }

    /** The real day again, for whoever tests after. */
    void isOver() {
        clock.reset();
    }

    /** Somebody's home is typed with its machines; whoever signs also pays and lives there. */
    UUID home(AShop.Shop shop, Examples.House house) {
        return shops.in(
                shop,
                () -> new ExampleRegister(customers, buildings, homes, people, equipment, hazards, codes).enter(house));
    }

    UUID payer(AShop.Shop shop, UUID home) {
        return shops.in(
                shop,
                () -> people.customers(List.of(home), PartInHome.PAYS, today.day())
                        .get(home));
    }

    /** An hour is 96.00, a filter 38.00, a float switch 46.00; the van holds ten of each. */
    void prices(AShop.Shop shop) {
        shops.in(shop, () -> {
            price(ItemKind.LABOUR, PriceBook.HOUR, "96.00");
            part(FILTER, new Wording("Filter 16 × 25 × 4", "Filtre 16 × 25 × 4"), "filter", "38.00");
            part(SWITCH, new Wording("Float switch", "Interrupteur à flotteur"), "float-switch", "46.00");
            UUID van = places.van(shop.technician()).orElseThrow().id();
            stock.receive(
                    UUID.randomUUID(),
                    van,
                    List.of(new KnownPart.Amount(FILTER, BigDecimal.TEN), new KnownPart.Amount(SWITCH, BigDecimal.TEN)),
                    null);
            return van;
        });
    }

    private void part(String code, Wording name, String kind, String price) {
        parts.keep(new KnownPart(code, name, "C62", kind, null));
        price(ItemKind.PART, code, price);
    }

    private void price(ItemKind kind, String code, String amount) {
        prices.set(new PriceEntry(kind, code, Money.of(amount, "CAD"), null, today.day()));
    }

    /** Two visits, one filter and thirty minutes included, ten percent off the rest. */
    UUID plan(AShop.Shop shop, String price, int instalments, String... tasks) {
        return shops.in(shop, () -> {
            Plan plan = plans.draft(facts(price, instalments, tasks));
            plan.putOnSale(today.day());
            plans.keep();
            return plan.id();
        });
    }

    private static PlanFacts facts(String price, int instalments, String... tasks) {
        return new PlanFacts(
                "two-turns",
                new Wording("Two turns", "Deux saisons"),
                2,
                Money.of(price, "CAD"),
                BigDecimal.TEN,
                instalments,
                30,
                false,
                Stream.of(tasks).map(task -> new PlanFacts.Promise(task, null)).toList(),
                List.of(new PlanFacts.Included("filter", BigDecimal.ONE)),
                List.of());
    }

    /** The plan costs something else from today. */
    void costs(AShop.Shop shop, UUID plan, String price, String... tasks) {
        shops.in(shop, () -> {
            plans.find(plan).orElseThrow().change(facts(price, 1, tasks));
            plans.keep();
            return plan;
        });
    }
}
