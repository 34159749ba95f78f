package changeover.web;

import static changeover.web.AShop.send;

import java.time.LocalDate;
import java.util.Map;

/** A partner whose licence holds for ninety days more. */
public final class APartner {

    private APartner() {}

    /** @return its id */
    public static String gas(AShop.Shop shop, String name, LocalDate today) {
        String partner = send(shop.office(), shop.api("partners"), Map.of("name", name, "trade", "gas"))
                .statusCode(201)
                .extract()
                .path("id");
        send(
                        shop.office(),
                        shop.api("partners/" + partner + "/papers"),
                        Map.of("kind", "licence", "expires", today.plusDays(90).toString()))
                .statusCode(200);
        return partner;
    }
}
