package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;

import changeover.web.ALivedInHome;
import changeover.web.AShop;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;

/** A shop whose owner has confirmed the province's tax, with a plan sold, invoiced and paid in part. */
@ApplicationScoped
public class ABilledShop {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    public AShop.Shop open(String region, String language) {
        var shop = shops.open(region, language);
        confirmed(shop);
        homes.sold(shop, language);
        List<Map<String, String>> drafts =
                as(shop.owner()).get(shop.api("invoices")).then().extract().path("findAll { it.number == null }");
        for (Map<String, String> draft : drafts) {
            send(shop.owner(), shop.api("invoices/" + draft.get("id") + "/issue"), Map.of());
        }
        send(
                        shop.owner(),
                        shop.api("payments"),
                        Map.of("customer", drafts.getFirst().get("customer"), "amount", "100.00", "way", "card"))
                .statusCode(201);
        return shop;
    }

    /** Ontario's tax, which ships from memory, has its source. */
    public static void confirmed(AShop.Shop shop) {
        post(
                        shop.owner(),
                        shop.at("shop/taxes"),
                        Map.of(
                                "seen", "CA-ON hst 2020-01-01 any any any 13",
                                "region", "CA-ON",
                                "code", "hst",
                                "labelEn", "HST 13%",
                                "labelFr", "TVH 13\u00a0%",
                                "category", "S",
                                "percent", "13",
                                "from", "2020-01-01",
                                "source", "The province's own page, read by the owner"))
                .statusCode(303);
    }
}
