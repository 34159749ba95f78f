package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Somebody who has only read the API's description brings homes, sells a plan, closes a visit, is asked for money. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class StrangerTest {

    private static final String FILE = """
            home,customer,language,phone,email,street,city,region,postal,country,latitude,longitude,access,unit,kind,make,model,serial,installed,fits,nameplate
            m-27,Solange Vautrin,fr,555-0129,solange@example.com,"27, rue des Aulnes",Sainte-Odette,QC,J0X 0X0,CA,,,,Filtre,filter-slot,,,,,size=16x25x4; thickness=4; direction=right,
            m-27,Solange Vautrin,fr,555-0129,solange@example.com,"27, rue des Aulnes",Sainte-Odette,QC,J0X 0X0,CA,,,,Thermopompe,outdoor-heat-pump,Norrland,NX-36,NX36-1,2021-06-15,drive=inverter,
            """;

    @Inject
    AShop shops;

    @Test
    void from_the_file_to_the_invoice_in_quebec() {
        var shop = shops.open("CA-QC", "fr");
        LocalDate day = LocalDate.now(ZoneId.of("America/Toronto"));
        as(shop.owner())
                .header("Operation-Id", UUID.randomUUID())
                .contentType("text/csv")
                .body(FILE)
                .post(shop.api("imports/homes?dry=false&bad=refuse"))
                .then()
                .statusCode(200)
                .body("written", equalTo(2))
                .body("homes", equalTo(1));
        String home = as(shop.owner())
                .queryParam("q", "aulnes")
                .get(shop.api("homes"))
                .then()
                .statusCode(200)
                .extract()
                .path("[0].id");
        String plan = send(
                        shop.owner(),
                        shop.api("plans"),
                        Map.ofEntries(
                                Map.entry("code", "two-turns"),
                                Map.entry("nameEn", "Two turns"),
                                Map.entry("nameFr", "Deux saisons"),
                                Map.entry("visits", 2),
                                Map.entry("price", "249.00"),
                                Map.entry("onSaleFrom", day.toString()),
                                Map.entry("tasks", tasks(shop))))
                .statusCode(201)
                .extract()
                .path("id");
        String agreement = send(
                        shop.owner(),
                        shop.api("agreements"),
                        Map.of("home", home, "plan", plan, "from", day.toString()))
                .statusCode(201)
                .extract()
                .path("id");
        send(
                        shop.owner(),
                        shop.api("agreements/" + agreement + "/acceptance"),
                        Map.of("by", "Solange Vautrin", "channel", "home"))
                .statusCode(422)
                .contentType("application/problem+json");
        send(
                        shop.owner(),
                        shop.api("agreements/" + agreement + "/acceptance"),
                        Map.of("by", "Solange Vautrin", "channel", "counter"))
                .statusCode(200)
                .body("acceptedBy", equalTo("Solange Vautrin"));

        List<Map<String, Object>> drafts = as(shop.owner())
                .queryParam("agreement", agreement)
                .get(shop.api("invoices"))
                .then()
                .statusCode(200)
                .extract()
                .path("");
        String invoice = (String) drafts.getFirst().get("id");
        send(shop.owner(), shop.api("invoices/" + invoice + "/issue"), Map.of())
                .statusCode(200)
                .body("taxes[0].amount.amount", equalTo("12.45"))
                .body("taxes[1].amount.amount", equalTo("24.84"))
                .body("total.amount", equalTo("286.29"));
        byte[] pdf = as(shop.owner())
                .get(shop.api("invoices/" + invoice + ".pdf"))
                .then()
                .statusCode(200)
                .contentType("application/pdf")
                .extract()
                .asByteArray();
        assertEquals("%PDF", new String(pdf, 0, 4, java.nio.charset.StandardCharsets.US_ASCII));

        var year =
                as(shop.owner()).get(shop.api("homes/" + home + "/year")).then().statusCode(200);
        List<List<String>> reasons = year.extract().path("visits.tasks.reason");
        assertFalse(reasons.isEmpty());
        assertFalse(reasons.stream().flatMap(List::stream).anyMatch(String::isBlank));
        close(shop, year.extract().path("visits[0].id"), day);
    }

    private void close(AShop.Shop shop, String visit, LocalDate day) {
        send(
                        shop.owner(),
                        shop.api("visits/" + visit + "/appointment"),
                        Map.of("technician", shop.technician().toString(), "day", day.toString(), "starts", "08:30"))
                .statusCode(200);
        String operation = UUID.randomUUID().toString();
        String closure = """
                {"others": "done", "minutes": 55, "receivedBy": "Solange Vautrin"}""";
        String first = closed(shop, visit, operation, closure);
        String again = closed(shop, visit, operation, closure);
        assertEquals(first, again);
        List<Object> drafts = as(shop.owner())
                .queryParam("visit", visit)
                .get(shop.api("invoices"))
                .then()
                .statusCode(200)
                .extract()
                .path("");
        assertEquals(1, drafts.size());
        as(shop.owner())
                .get(shop.api("visits/" + visit + "/report.pdf"))
                .then()
                .statusCode(200)
                .contentType("application/pdf");
    }

    private static String closed(AShop.Shop shop, String visit, String operation, String closure) {
        return as(shop.owner())
                .header("Operation-Id", operation)
                .contentType(ContentType.JSON)
                .body(closure)
                .post(shop.api("visits/" + visit + "/closure"))
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    /** Every task that needs no ticket, so that this shop's technician may close them. */
    private static List<Map<String, String>> tasks(AShop.Shop shop) {
        List<Map<String, Object>> all = as(shop.owner())
                .get(shop.api("tasks"))
                .then()
                .statusCode(200)
                .extract()
                .path("");
        return all.stream()
                .filter(task -> List.of("filter-slot", "outdoor-heat-pump").stream()
                        .anyMatch(kind -> ((List<?>) task.get("kinds")).contains(kind)))
                .filter(task -> "none".equals(task.get("ticket")))
                .map(task -> Map.of("task", (String) task.get("code")))
                .toList();
    }
}
