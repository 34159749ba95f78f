package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlaces;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** Pads and filters between visits: out of stock, and no more than the plan gives. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class GivenPagesTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    EntityManager rows;

    @Test
    void what_is_posted_leaves_the_shelf_and_counts_as_the_plans() {
        for (String language : new String[] {"en", "fr"}) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            var lived = homes.sold(shop, language);
            UUID shelf = shelf(shop);
            String path = shop.at("homes/" + lived.home() + "/given");
            as(shop.office())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Rien n’a été laissé ici" : "Nothing was left here"));
            give(shop, path, shelf, "1").statusCode(422).body(containsString(french ? "n’en comprend" : "gives none"));
            planGives(shop, "2");
            give(shop, path, shelf, "3").statusCode(422).body(containsString("quantity-wrong"));
            UUID operation = UUID.randomUUID();
            give(shop, path, shelf, "1", operation).statusCode(303);
            give(shop, path, shelf, "1", operation).statusCode(303);
            assertEquals("9", left(shop, shelf));
            give(shop, path, shelf, "2").statusCode(422).body(containsString("1"));
            send(
                            shop.office(),
                            shop.api("homes/" + lived.home() + "/given"),
                            Map.of("part", "FIL-4", "quantity", "1", "place", shelf, "how", "left"))
                    .statusCode(200)
                    .body("[0].how", equalTo("left"))
                    .body("[1].how", equalTo("posted"));
            assertEquals("8", left(shop, shelf));
            as(shop.office()).get(path).then().body(containsString(french ? "posté" : "posted"));
        }
    }

    @Test
    void two_who_give_the_last_one_at_once_give_one() throws Exception {
        var shop = shops.open("CA-QC", "en");
        var lived = homes.sold(shop, "en");
        UUID shelf = shelf(shop);
        planGives(shop, "1");
        String path = shop.at("homes/" + lived.home() + "/given");
        try (var hands = Executors.newFixedThreadPool(4)) {
            List<Future<Integer>> answers = hands.invokeAll(Collections.nCopies(
                    4, () -> give(shop, path, shelf, "1").extract().statusCode()));
            int given = 0;
            for (Future<Integer> answer : answers) {
                given += answer.get() == 303 ? 1 : 0;
            }
            assertEquals(1, given);
        }
        assertEquals("9", left(shop, shelf));
    }

    private UUID shelf(AShop.Shop shop) {
        return shops.in(shop, () -> {
            parts.keep(new KnownPart("FIL-4", new Wording("Deep filter", "Filtre épais"), "H87", "filter", "16x25"));
            UUID shelf = places.all().getFirst().id();
            stock.receive(UUID.randomUUID(), shelf, List.of(new KnownPart.Amount("FIL-4", BigDecimal.TEN)), null);
            return shelf;
        });
    }

    private void planGives(AShop.Shop shop, String quantity) {
        shops.in(
                shop,
                () -> rows.createNativeQuery(
                                "insert into agreement_part (agreement_id, part_kind, quantity) select id, 'filter', "
                                        + quantity + " from agreement")
                        .executeUpdate());
    }

    private String left(AShop.Shop shop, UUID shelf) {
        return shops.in(shop, () -> stock.onHand(shelf, "FIL-4").toPlainString());
    }

    private static ValidatableResponse give(AShop.Shop shop, String path, UUID shelf, String quantity) {
        return give(shop, path, shelf, quantity, UUID.randomUUID());
    }

    private static ValidatableResponse give(AShop.Shop shop, String path, UUID shelf, String quantity, UUID operation) {
        return post(
                shop.office(),
                path,
                Map.of(
                        "operation",
                        operation.toString(),
                        "part",
                        "FIL-4",
                        "quantity",
                        quantity,
                        "place",
                        shelf.toString(),
                        "how",
                        "posted"));
    }
}
