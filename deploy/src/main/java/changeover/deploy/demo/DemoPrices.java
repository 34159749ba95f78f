package changeover.deploy.demo;

import static changeover.deploy.demo.DemoShelf.cad;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.MarkUp;
import changeover.billing.pricing.NextPrices;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.PriceRow;
import changeover.billing.pricing.Prices;
import changeover.billing.pricing.PricingRules;
import changeover.billing.pricing.TravelZone;
import changeover.billing.pricing.Zones;
import changeover.contracts.Examples;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** What stands behind a shop's prices: mark-ups, zones, rates by the hour of the day, and a version prepared ahead. */
@ApplicationScoped
public class DemoPrices {

    private static final BigDecimal THREE = new BigDecimal("3");

    @Inject
    Prices prices;

    @Inject
    PricingRules rules;

    @Inject
    Zones zones;

    @Inject
    Parts parts;

    @Inject
    Businesses businesses;

    /**
     * @param day the shop's first
     * @param today the day the demo is looked at: the next version begins with the year after it
     */
    void fill(Examples.Shop shop, LocalDate day, LocalDate today) {
        rules.setByCost(List.of(byCost("0.00", "110", day), byCost("25.00", "80", day), byCost("150.00", "45", day)));
        parts.keep(new KnownPart("PMP-1", new Wording("Condensate pump", "Pompe à condensats"), "C62", null, null));
        prices.write(new PriceRow(ItemKind.PART, "PMP-1", null, null, cad("62.40"), day));
        prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.AFTER_HOURS, cad("168.00"), cad("85.50"), day));
        prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOLIDAY, cad("196.00"), cad("114.00"), day));
        zones(shop, day);
        if (!shop.place().equals("CA-QC")) {
            prices.set(new PriceEntry(ItemKind.TRAVEL, PriceBook.NO_ACCESS, cad("60.00"), null, day));
        }
        LocalDate next = today.plusYears(1).withDayOfYear(1);
        var version = new NextPrices(
                next, Map.of(ItemKind.PART, THREE, ItemKind.LABOUR, THREE, ItemKind.TRAVEL, THREE), cad("0.05"));
        prices.writeAll(version.rows(prices.book()));
    }

    private void zones(Examples.Shop shop, LocalDate day) {
        boolean french = shop.language().equals("fr");
        businesses
                .profile()
                .standsAt(new BigDecimal(french ? "45.40" : "44.20"), new BigDecimal(french ? "-73.00" : "-77.60"));
        businesses.keep();
        String area = TravelZone.bare(shop.postal()).substring(0, 3);
        zones.set(new TravelZone(
                "hills", new Wording("Hills", "Collines"), List.of(area + "8", area + "9"), null, day, false));
        zones.set(new TravelZone("near", new Wording("Near", "Proche"), List.of(), 15, day, false));
        prices.set(new PriceEntry(ItemKind.TRAVEL, "hills", cad("70.00"), cad("34.00"), day));
        prices.set(new PriceEntry(ItemKind.TRAVEL, "near", cad("38.00"), cad("18.00"), day));
    }

    private static MarkUp byCost(String from, String percent, LocalDate day) {
        return new MarkUp(MarkUp.Scope.COST, "", cad(from), new BigDecimal(percent), cad("0.05"), day);
    }
}
