package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Today;
import changeover.web.APartner;
import changeover.web.AShop;
import changeover.web.field.PlannedVisit;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What a partner did not do is never taken for done because a program named it wrongly. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class VisitPartnerApiTest {

    @Inject
    AShop shops;

    @Inject
    Today today;

    @Test
    void what_was_not_done_is_named_by_lines_of_the_visit_or_refused() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = shops.in(shop, () -> today.day());
        String visit = PlannedVisit.visit(shop, PlannedVisit.home(shop));
        String partner = APartner.gas(shop, "Brandt Gas", day);
        String with = shop.api("visits/" + visit + "/partner");
        send(shop.owner(), shop.api("review-rules"), Map.of("kind", "first", "first", 5, "from", day.toString()))
                .statusCode(201);
        send(shop.office(), with, Map.of("partner", partner, "day", day.toString(), "price", "220.00"))
                .statusCode(200);
        var close = new HashMap<String, Object>(
                Map.of("day", day.toString(), "notDoneWhy", "No part", "nobodyWhy", "The key was in the box"));
        Map.<Object, String>of(
                        UUID.randomUUID().toString(), "typed.list-of-texts",
                        List.of(7), "typed.list-of-texts",
                        List.of("the filter"), "typed.id",
                        List.of(UUID.randomUUID().toString()), "closeout.task-not-found")
                .forEach((said, code) -> {
                    close.put("notDone", said);
                    send(shop.office(), with + "/closure", close)
                            .statusCode(422)
                            .body("refusals.field", hasItem("notDone"))
                            .body("refusals.code", hasItem(code));
                });
        as(shop.office()).get(with).then().body("made", equalTo(false));
        List<String> tasks = as(shop.office())
                .get(shop.api("visits/" + visit))
                .then()
                .extract()
                .path("tasks.id");
        close.put("notDone", List.of(tasks.getFirst()));
        send(shop.office(), with + "/closure", close).statusCode(200).body("made", equalTo(true));
        as(shop.office()).get(shop.api("reviews")).then().body("size()", equalTo(0));
    }
}
