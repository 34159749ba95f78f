package changeover.deploy.demo;

import changeover.billing.costs.RunningCost;
import changeover.billing.costs.RunningCosts;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.Overhead;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.Examples;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.money.Money;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlaces;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** What the shop begins with: parts, prices, vans, and two plans on sale. */
@ApplicationScoped
public class DemoShelf {

    private static final String CURRENCY = "CAD";

    /** A part of the shelf: code, both names, kind, size, price, cost. */
    private record Item(String code, String en, String fr, String kind, String size, String price, String cost) {}

    private static final List<Item> ITEMS = List.of(
            new Item(
                    "FIL-16254",
                    "Filter 16 × 25 × 4, MERV 11",
                    "Filtre 16 × 25 × 4, MERV 11",
                    "filter",
                    "16x25x4",
                    "38.00",
                    "15.75"),
            new Item(
                    "FIL-20254",
                    "Filter 20 × 25 × 4, MERV 11",
                    "Filtre 20 × 25 × 4, MERV 11",
                    "filter",
                    "20x25x4",
                    "42.00",
                    "17.10"),
            new Item(
                    "FIL-16251",
                    "Filter 16 × 25 × 1, MERV 8",
                    "Filtre 16 × 25 × 1, MERV 8",
                    "filter",
                    "16x25x1",
                    "14.00",
                    "4.20"),
            new Item(
                    "FIL-20201",
                    "Filter 20 × 20 × 1, MERV 8",
                    "Filtre 20 × 20 × 1, MERV 8",
                    "filter",
                    "20x20x1",
                    "15.00",
                    "4.45"),
            new Item(
                    "FIL-16201",
                    "Filter 16 × 20 × 1, MERV 8",
                    "Filtre 16 × 20 × 1, MERV 8",
                    "filter",
                    "16x20x1",
                    "13.50",
                    "4.05"),
            new Item(
                    "FIL-20255",
                    "Filter 20 × 25 × 5, MERV 11",
                    "Filtre 20 × 25 × 5, MERV 11",
                    "filter",
                    "20x25x5",
                    "47.00",
                    "19.60"),
            new Item("FLO-3", "Float switch", "Interrupteur à flotteur", "float-switch", "", "46.00", "19.17"));

    @Inject
    Parts parts;

    @Inject
    Prices prices;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    Plans plans;

    @Inject
    RunningCosts costs;

    void fill(Examples.Shop shop, List<DemoShop.Hand> hands, LocalDate day) {
        prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, cad("112.00"), cad("57.00"), day));
        prices.set(new PriceEntry(ItemKind.TRAVEL, PriceBook.VISIT, cad("45.00"), cad("21.00"), day));
        costs.set(new RunningCost.Facts(
                day,
                12,
                new Overhead.Percent(BigDecimal.valueOf(30)),
                Examples.latitude(shop),
                Examples.longitude(shop)));
        var received = new ArrayList<KnownPart.Amount>();
        for (Item item : ITEMS) {
            parts.keep(new KnownPart(
                    item.code(),
                    new Wording(item.en(), item.fr()),
                    "C62",
                    item.kind(),
                    item.size().isEmpty() ? null : item.size()));
            prices.set(new PriceEntry(ItemKind.PART, item.code(), cad(item.price()), cad(item.cost()), day));
            received.add(new KnownPart.Amount(item.code(), BigDecimal.valueOf(400)));
        }
        UUID shelf = places.shelf().orElseThrow().id();
        stock.receive(UUID.randomUUID(), shelf, received, null);
        for (DemoShop.Hand hand : hands) {
            if (hand.worker().role().equals("technician")) {
                var loaded = ITEMS.stream()
                        .map(item -> new KnownPart.Amount(item.code(), BigDecimal.valueOf(100)))
                        .toList();
                stock.move(
                        UUID.randomUUID(),
                        shelf,
                        places.van(hand.person()).orElseThrow().id(),
                        loaded,
                        null);
            }
        }
        sell("two-turns", "Two turns", "Deux saisons", 2, "389.00", 12, false, day);
        sell(
                "three-visits",
                "Two turns and a winter visit",
                "Deux saisons et une visite d’hiver",
                3,
                "549.00",
                3,
                false,
                day);
        sell("roof-four", "A roof, four times", "Un toit, quatre fois", 4, "980.00", 4, true, day);
    }

    private void sell(
            String code,
            String en,
            String fr,
            int visits,
            String price,
            int instalments,
            boolean roofs,
            LocalDate day) {
        List<PlanFacts.Promise> promises = Catalogue.shipped().tasks().stream()
                .filter(task -> isOffered(task, roofs))
                .map(task -> new PlanFacts.Promise(task.code(), null))
                .toList();
        var plan = plans.draft(new PlanFacts(
                code,
                new Wording(en, fr),
                visits,
                cad(price),
                BigDecimal.TEN,
                instalments,
                0,
                false,
                promises,
                List.of(new PlanFacts.Included("filter", BigDecimal.TWO)),
                List.of()));
        plan.putOnSale(day);
        plans.keep();
    }

    /** Everything that comes with a season or a year; what is done on request only is sold when asked for. */
    private static boolean isOffered(Task task, boolean roofs) {
        return !task.cadence().json().contains("on-request") && task.kinds().contains("rooftop-unit") == roofs;
    }

    static Money cad(String amount) {
        return Money.of(amount, CURRENCY);
    }
}
