package changeover.web.walls;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;

import changeover.web.AShop;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The next planned visit of a home, brought forward to today: the technician stands in the house. */
final class AVisitBegun {

    private AVisitBegun() {}

    static void in(AShop.Shop shop, UUID home, LocalDate day) {
        String visit = as(shop.owner())
                .get(shop.api("homes/" + home + "/year"))
                .then()
                .extract()
                .path("visits.find { it.day == '" + day.plusDays(8) + "' }.id");
        ALivedInShop.appoint(shop, visit, shop.technician(), day, "15:30");
        tell(shop, visit);
    }

    /** The technician has arrived and has found something. */
    private static void tell(AShop.Shop shop, String visit) {
        String task = as(shop.owner())
                .get(shop.api("visits/" + visit))
                .then()
                .extract()
                .path("tasks[0].id");
        Map<String, String> found =
                Map.of("level", "recommended", "text", "The drain runs slowly", "language", "en", "task", task);
        send(
                        shop.technician(),
                        shop.api("operations"),
                        Map.of(
                                "operations",
                                List.of(said(visit, 1, "arrive", Map.of()), said(visit, 2, "finding", found))))
                .statusCode(200);
    }

    private static Map<String, Object> said(String visit, int sequence, String kind, Map<String, String> body) {
        return Map.of(
                "id", UUID.randomUUID().toString(),
                "visit", visit,
                "device", "tablet",
                "sequence", sequence,
                "at", OffsetDateTime.now().toString(),
                "kind", kind,
                "body", body);
    }
}
