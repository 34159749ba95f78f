package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Refused;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Closures are held and looked over by programs too, and never what must not be used. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ReviewsByProgramTest extends AReviewedShop {

    @Test
    void what_must_not_be_used_is_told_at_once_although_its_closure_waits() {
        Shop shop = shops.open("CA-ON", "en");
        UUID home = priced(shop, "en").home();
        send(
                        shop.owner(),
                        shop.api("review-rules"),
                        Map.of("kind", "severity", "level", "urgent", "from", TODAY.toString()))
                .statusCode(201);
        String visit = OrderPagesTest.visit(shop, home);
        close(
                shop,
                visit,
                List.of(Map.of(
                        "level", "do_not_use",
                        "sentence", "co-high",
                        "toldTo", "Anselm Birk",
                        "answer", "yes")));
        assertEquals(0, reports(shop, visit).size());
        String stop = as(shop.office())
                .get(shop.api("stopped"))
                .then()
                .body("size()", equalTo(1))
                .extract()
                .path("[0].id");
        assertEquals(1, shops.in(shop, () -> outbox.about(UUID.fromString(stop)).size()));
        String held = as(shop.office())
                .get(shop.api("reviews"))
                .then()
                .body("[0].why", equalTo("severity"), "[0].gravest", equalTo("do_not_use"))
                .extract()
                .path("[0].id");
        send(shop.technician(), shop.api("reviews/" + held + "/approval"), Map.of("version", 1))
                .statusCode(404);
        send(shop.office(), shop.api("reviews/" + held + "/approval"), Map.of("version", 1))
                .statusCode(200)
                .body("looked.by", equalTo("Basil Fenn"));
        assertEquals(1, reports(shop, visit).size());
    }

    @Test
    void a_rule_that_ended_holds_nothing_and_whoever_closed_it_does_not_say_yes() {
        Shop shop = shops.open("CA-ON", "en");
        UUID home = priced(shop, "en").home();
        String rule = send(
                        shop.owner(),
                        shop.api("review-rules"),
                        Map.of("kind", "first", "first", 2, "from", TODAY.toString()))
                .statusCode(201)
                .extract()
                .path("id");
        String first = OrderPagesTest.visit(shop, home);
        send(
                        shop.office(),
                        shop.api("visits/" + first + "/closure"),
                        Map.of("minutes", 30, "receivedBy", "Anselm Birk"))
                .statusCode(200);
        String held =
                as(shop.office()).get(shop.api("reviews")).then().extract().path("[0].id");
        var refused = assertThrows(
                Refused.class,
                () -> shops.in(shop, () -> {
                    reviews.approve(UUID.fromString(held), 1, null, shop.technician());
                    return true;
                }));
        assertEquals("review.by-another", refused.first().code());
        send(shop.owner(), shop.api("review-rules/" + rule + "/ending"), Map.of())
                .statusCode(200);
        send(shop.owner(), shop.api("review-rules/" + rule + "/ending"), Map.of())
                .statusCode(422);
        as(shop.office()).get(shop.api("reviews")).then().body("id", equalTo(List.of(held)));
        as(shop.owner()).get(shop.at("shop/reviews")).then().body(not(containsString("/ending\"")));
    }

    @Test
    void times_stand_beside_the_others_by_the_alphabet_and_no_technician_sees_them() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            as(shop.office())
                    .get(shop.at("reviews/spread"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "pas un jugement" : "no judgement"));
            as(shop.technician()).get(shop.at("reviews/spread")).then().statusCode(404);
            as(shop.technician())
                    .get(shop.api("reviews/spread?from=2026-01-01&last=2026-12-31"))
                    .then()
                    .statusCode(404);
            as(shop.office())
                    .get(shop.api("reviews/spread?from=2026-01-01&last=2026-12-31"))
                    .then()
                    .statusCode(200)
                    .body("times.size()", equalTo(0));
        }
    }
}
