package changeover.web.api;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BusinessApiTest {

    private static final Map<String, Object> PAPER = Map.of(
            "street", "27, rue de la Fonderie",
            "city", "Port Ambrose",
            "region", "ON",
            "postal", "K0X 0X0",
            "country", "CA",
            "phone", "555-0177",
            "invoiceTermsDays", 15,
            "theme", "day",
            "gstNumber", "123456789 RT0001",
            "carryOpenSeason", true);

    @Inject
    AShop shops;

    @Test
    void the_paper_is_written_anew_on_the_edition_that_was_read() {
        var shop = shops.open("CA-ON", "en");
        String path = shop.api("business");
        as(shop.office())
                .get(path)
                .then()
                .statusCode(200)
                .body("region", equalTo("CA-ON"))
                .body("zone", equalTo("America/Toronto"))
                .body("currency", equalTo("CAD"))
                .body("paper.gstNumber", equalTo("123456789 RT0001"));
        String edition = Sending.etag(shop.owner(), path);
        Sending.put(shop.owner(), path, edition, PAPER)
                .statusCode(200)
                .body("paper.invoiceTermsDays", equalTo(15))
                .body("version", equalTo(1));
        Sending.put(shop.owner(), path, edition, PAPER).statusCode(422);
        Sending.put(shop.owner(), path, "", PAPER).statusCode(422).body("refusal", containsString("If-Match"));
    }

    @Test
    void the_bound_of_a_visit_is_kept_and_judged() {
        var shop = shops.open("CA-QC", "fr");
        String path = shop.api("business");
        var paper = new HashMap<>(PAPER);
        paper.put("visitMinutesAtMost", 180);
        Sending.put(shop.owner(), path, "\"0\"", paper).statusCode(200).body("paper.visitMinutesAtMost", equalTo(180));
        for (Object wrong : new Object[] {29, 601, -1, "soon", 45.5}) {
            paper.put("visitMinutesAtMost", wrong);
            Sending.put(shop.owner(), path, "\"1\"", paper)
                    .statusCode(422)
                    .body("refusals.field", hasItems("visitMinutesAtMost"));
        }
        Sending.put(shop.owner(), path, "\"1\"", PAPER).statusCode(200).body("paper.visitMinutesAtMost", equalTo(null));
    }

    @Test
    void what_is_wrong_is_said_in_the_readers_language() {
        var wrong = new HashMap<>(PAPER);
        wrong.put("gstNumber", "12345");
        var english = shops.open("CA-ON", "en");
        Sending.put(english.owner(), english.api("business"), "\"0\"", wrong)
                .statusCode(422)
                .body("refusals.field", hasItems("gstNumber"))
                .body("refusal", containsString("nine digits"));
        var french = shops.open("CA-QC", "fr");
        Sending.put(french.owner(), french.api("business"), "\"0\"", wrong)
                .statusCode(422)
                .body("refusal", containsString("neuf chiffres"));
        wrong.put("slug", "another");
        Sending.put(english.owner(), english.api("business"), "\"0\"", wrong).statusCode(422);
    }

    @Test
    void the_owner_writes_the_office_reads_others_find_nothing() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        Sending.put(shop.office(), shop.api("business"), "\"0\"", PAPER).statusCode(404);
        as(shop.technician()).get(shop.api("business")).then().statusCode(404);
        as(shop.owner()).get(other.api("business")).then().statusCode(404);
    }
}
