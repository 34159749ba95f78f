package changeover.web.office;

import static changeover.web.AShop.send;

import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.money.Money;
import changeover.scheduling.reviews.Reviews;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A shop with prices whose technician closes visits. */
abstract class AReviewedShop {

    static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));
    static final LocalDate OPENED = LocalDate.of(2026, 1, 5);

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    Outbox outbox;

    @Inject
    Prices prices;

    @Inject
    Reviews reviews;

    ALivedInHome.Lived priced(Shop shop, String language) {
        ALivedInHome.Lived lived = homes.machines(shop, language);
        shops.in(shop, () -> {
            prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, Money.of("120.00", "CAD"), null, OPENED));
            prices.set(new PriceEntry(ItemKind.TRAVEL, PriceBook.VISIT, Money.of("35.00", "CAD"), null, OPENED));
            return true;
        });
        return lived;
    }

    static void close(Shop shop, String visit, List<Map<String, Object>> findings) {
        send(
                        shop.technician(),
                        shop.api("visits/" + visit + "/closure"),
                        Map.of("minutes", 45, "receivedBy", "Anselm Birk", "findings", findings))
                .statusCode(200);
    }

    List<OutboxMessage> reports(Shop shop, String visit) {
        return shops.in(shop, () -> outbox.about(UUID.fromString(visit)));
    }
}
