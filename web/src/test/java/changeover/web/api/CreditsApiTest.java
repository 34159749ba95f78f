package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import changeover.web.office.ABilledShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Credits and issuing over the API: nothing is dated ahead, and a list of lines means what it says. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CreditsApiTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    ABilledShop billed;

    @Test
    void no_lines_credit_nothing_and_a_line_is_named_once() {
        AShop.Shop shop = billed.open("CA-QC", "en");
        String invoice =
                as(shop.owner()).get(shop.api("invoices")).then().extract().path("find { it.number != null }.id");
        send(shop.office(), shop.api("credits"), Map.of("invoice", invoice, "why", "Goodwill", "lines", List.of()))
                .statusCode(422)
                .body("refusals[0].field", equalTo("lines"));
        send(
                        shop.office(),
                        shop.api("credits"),
                        Map.of(
                                "invoice",
                                invoice,
                                "why",
                                "Goodwill",
                                "lines",
                                List.of(Map.of("position", 1, "net", "10.00"), Map.of("position", 1, "net", "5.00"))))
                .statusCode(422)
                .body("refusals[0].code", equalTo("credit.line-twice"));
        String draft = send(shop.office(), shop.api("credits"), Map.of("invoice", invoice, "why", "Goodwill"))
                .statusCode(201)
                .extract()
                .path("id");
        send(
                        shop.office(),
                        shop.api("invoices/" + draft + "/issue"),
                        Map.of("day", TODAY.plusDays(30).toString()))
                .statusCode(422)
                .body("refusals[0].code", equalTo("run.day-to-come"));
        send(shop.office(), shop.api("invoices/" + draft + "/issue"), Map.of()).statusCode(200);
        as(shop.office())
                .get(shop.api("invoices/" + invoice))
                .then()
                .statusCode(200)
                .body("state", equalTo("credited"));
        as(shop.office())
                .get(shop.api("invoices"))
                .then()
                .body("find { it.id == '" + invoice + "' }.state", equalTo("credited"));
    }
}
