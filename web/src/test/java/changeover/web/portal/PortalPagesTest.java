package changeover.web.portal;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static io.restassured.RestAssured.given;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.PartInHome;
import changeover.web.AShop;
import changeover.web.OnTheirPage;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A customer opens the link, reads their year and papers; a stranger, and an occupant, read what is theirs only. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PortalPagesTest {

    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";
    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    Customers customers;

    @Inject
    HomeParts parts;

    private record Sold(AShop.Shop shop, UUID home, UUID payer, String invoice, String visit) {}

    @Test
    void a_customer_reads_their_year_in_their_language() throws IOException {
        reads("fr", "Ouvrir ma page", "Prochaine visite", "À faire par vous", "Reste à payer", "Rapport du");
        reads("en", "Open my page", "Next visit", "Yours to do", "Left to pay", "Report of");
    }

    private void reads(String language, String button, String... words) throws IOException {
        Sold sold = sold(language);
        String secret = OnTheirPage.secret(sold.shop(), sold.payer());
        String door = sold.shop().at("yours/" + secret);
        given().get(door).then().statusCode(200).body(containsString(button)).body(not(containsString("<script")));
        given().redirects().follow(false).post(door).then().statusCode(400);
        ValidatableResponse exchanged = press(door).statusCode(303);
        String cookie = exchanged.extract().header("Set-Cookie");
        String all = String.join("\n", exchanged.extract().headers().getValues("Set-Cookie"));
        assertTrue(all.contains("yours=" + secret) && all.contains("HttpOnly") && all.contains("SameSite=Lax"), cookie);
        assertTrue(all.contains("Path=" + sold.shop().at("yours")), all);
        assertTrue(exchanged.extract().header("Location").endsWith(sold.shop().at("yours")));

        String page = OnTheirPage.read(secret, sold.shop().at("yours"))
                .statusCode(200)
                .extract()
                .asString();
        for (String word : words) {
            assertTrue(page.contains(word), word);
        }
        assertTrue(page.contains("9 Tannery Row") && page.contains("<svg class=\"draw"), "the home and its year");
        assertTrue(page.contains("286") && !page.contains(secret), "the price, and no secret");
        Files.writeString(Path.of("target", "yours-" + language + ".html"), page);
        for (String paper : List.of("invoices/" + sold.invoice(), "reports/" + sold.visit())) {
            OnTheirPage.read(secret, sold.shop().at("yours/" + paper))
                    .statusCode(200)
                    .contentType("application/pdf");
            given().get(sold.shop().at("yours/" + paper)).then().statusCode(404);
        }
    }

    @Test
    void an_occupant_sees_no_price() {
        Sold sold = sold("en");
        UUID occupant = shops.in(sold.shop(), () -> {
            UUID id = customers
                    .add(Customer.Facts.of("Ines Corvin", "en", null, null))
                    .id();
            parts.begin(sold.home(), id, PartInHome.LIVES, TODAY, null);
            return id;
        });
        String secret = OnTheirPage.secret(sold.shop(), occupant);
        OnTheirPage.read(secret, sold.shop().at("yours"))
                .statusCode(200)
                .body(containsString("9 Tannery Row"))
                .body(containsString("Report of"))
                .body(not(containsString("286")))
                .body(not(containsString("249")))
                .body(not(containsString("Left to pay")));
        OnTheirPage.read(secret, sold.shop().at("yours/reports/" + sold.visit()))
                .statusCode(200);
        OnTheirPage.read(secret, sold.shop().at("yours/invoices/" + sold.invoice()))
                .statusCode(404);
    }

    @Test
    void a_secret_that_is_wrong_or_taken_back_or_of_another_shop_opens_nothing() {
        Sold sold = sold("en");
        String secret = OnTheirPage.secret(sold.shop(), sold.payer());
        AShop.Shop other = shops.open("CA-ON", "en");
        String wrong = "A".repeat(43);
        String expected = nothing(sold.shop(), wrong);
        assertEquals(expected, nothing(other, secret));
        OnTheirPage.read(secret, sold.shop().at("yours")).statusCode(200);
        String page = sold.shop().at("customers/" + sold.payer() + "/link");
        as(sold.shop().office()).get(page).then().statusCode(200).body(not(containsString(secret)));
        as(sold.shop().technician()).get(page).then().statusCode(404);
        as(other.owner())
                .get(other.at("customers/" + sold.payer() + "/link"))
                .then()
                .statusCode(404);
        post(sold.shop().office(), page + "/revocation", Map.of()).statusCode(303);
        assertEquals(expected, nothing(sold.shop(), secret));
        given().get(sold.shop().at("yours")).then().statusCode(404);
    }

    private static String nothing(AShop.Shop shop, String secret) {
        OnTheirPage.read(secret, shop.at("yours")).statusCode(404);
        press(shop.at("yours/" + secret)).statusCode(404);
        return given().get(shop.at("yours/" + secret))
                .then()
                .statusCode(404)
                .extract()
                .asString();
    }

    private static ValidatableResponse press(String door) {
        return given().redirects()
                .follow(false)
                .cookie("csrf-token", TOKEN)
                .contentType(ContentType.URLENC.withCharset("UTF-8"))
                .formParam("csrf", TOKEN)
                .post(door)
                .then();
    }

    private Sold sold(String language) {
        AShop.Shop shop = shops.open("CA-QC", language);
        as(shop.owner())
                .header("Operation-Id", UUID.randomUUID())
                .contentType("text/csv")
                .body("""
                        home,customer,language,street,city,region,country,unit,kind,fits
                        h,Anselm Birk,%s,9 Tannery Row,Port Ambrose,QC,CA,Filter,filter-slot,size=16x25x4; thickness=4
                        h,Anselm Birk,%s,9 Tannery Row,Port Ambrose,QC,CA,Drain,condensate,
                        """.formatted(language, language))
                .post(shop.api("imports/homes"))
                .then()
                .statusCode(200);
        String home = as(shop.owner()).get(shop.api("homes")).then().extract().path("[0].id");
        String agreement = AShop.sold(shop, home, TODAY, tasks(shop));
        String invoice = as(shop.owner())
                .queryParam("agreement", agreement)
                .get(shop.api("invoices"))
                .then()
                .extract()
                .path("[0].id");
        send(shop.owner(), shop.api("invoices/" + invoice + "/issue"), Map.of()).statusCode(200);
        String visit = as(shop.owner())
                .get(shop.api("homes/" + home + "/year"))
                .then()
                .extract()
                .path("visits[0].id");
        send(
                        shop.owner(),
                        shop.api("visits/" + visit + "/appointment"),
                        Map.of("technician", shop.technician().toString(), "day", TODAY.toString(), "starts", "08:30"))
                .statusCode(200);
        send(
                        shop.owner(),
                        shop.api("visits/" + visit + "/closure"),
                        Map.of("others", "done", "minutes", 55, "receivedBy", "Anselm Birk"))
                .statusCode(200);
        UUID payer =
                shops.in(shop, () -> customers.find("Anselm Birk", 1).getFirst().id());
        return new Sold(shop, UUID.fromString(home), payer, invoice, visit);
    }

    private static List<Map<String, String>> tasks(AShop.Shop shop) {
        List<Map<String, Object>> all = as(shop.owner())
                .get(shop.api("tasks"))
                .then()
                .statusCode(200)
                .extract()
                .path("");
        return all.stream()
                .filter(task -> List.of("filter-slot", "condensate").stream()
                        .anyMatch(kind -> ((List<?>) task.get("kinds")).contains(kind)))
                .filter(task -> "none".equals(task.get("ticket")))
                .map(task -> Map.of("task", (String) task.get("code")))
                .toList();
    }
}
