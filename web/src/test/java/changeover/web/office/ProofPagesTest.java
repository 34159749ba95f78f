package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What was done in a home is proved in either language, without a price, a key or a code. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ProofPagesTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    Parts parts;

    @Test
    void what_was_done_stands_on_a_page_and_on_paper_in_either_language() {
        Shop shop = shops.open("CA-ON", "en");
        UUID home = homes.sold(shop, "en").home();
        shops.in(
                shop,
                () -> parts.keep(new KnownPart("CAP-45", new Wording("Capacitor", "Condensateur"), "C62", null, null)));
        send(
                        shop.office(),
                        shop.api("visits/" + OrderPagesTest.visit(shop, home) + "/closure"),
                        Map.of(
                                "minutes",
                                45,
                                "receivedBy",
                                "Anselm Birk",
                                "parts",
                                List.of(Map.of(
                                        "part", "CAP-45", "quantity", "1", "why", "repair", "short", "on the way"))))
                .statusCode(200);
        String proof = shop.at("homes/" + home + "/proof");
        as(shop.office()).get(shop.at("homes/" + home)).then().body(containsString(proof));
        as(shop.office())
                .get(proof)
                .then()
                .statusCode(200)
                .body(
                        containsString("Proof of maintenance"),
                        containsString("Mika Tarn"),
                        containsString("Capacitor fitted (1)"),
                        containsString("SN-17-00817"),
                        not(containsString("2468")),
                        not(containsString("389.00")),
                        not(containsString("16. Furnace room")));
        as(shop.office())
                .get(proof + "?language=fr")
                .then()
                .statusCode(200)
                .body(
                        containsString("lang=\"fr-CA\""),
                        containsString("Nº de série"),
                        containsString("Condensateur, pose (1)"));
        for (String language : List.of("en", "fr")) {
            byte[] pdf = as(shop.office())
                    .get(proof + ".pdf?language=" + language)
                    .then()
                    .statusCode(200)
                    .contentType("application/pdf")
                    .extract()
                    .asByteArray();
            assertTrue(pdf.length > 1000, "bytes: " + pdf.length);
        }
        UUID bare = homes.machines(shop, "fr").home();
        as(shop.office())
                .get(shop.at("homes/" + bare + "/proof"))
                .then()
                .body(containsString("Nothing was written down as done yet"));
        as(shop.technician()).get(proof).then().statusCode(404);
    }
}
