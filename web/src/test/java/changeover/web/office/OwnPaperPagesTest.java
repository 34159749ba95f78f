package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OwnPaperPagesTest {

    private static final byte[] PDF = "%PDF-1.7 insured".getBytes(StandardCharsets.US_ASCII);
    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    @Inject
    AShop shops;

    @Inject
    Customers customers;

    @Inject
    Outbox outbox;

    @Inject
    People people;

    @Inject
    Today today;

    private ValidatableResponse bring(AShop.Shop shop, String name, LocalDate last, byte[] file) {
        return as(shop.office())
                .redirects()
                .follow(false)
                .cookie("csrf-token", TOKEN)
                .multiPart("csrf", TOKEN)
                .multiPart("kind", "insurance")
                .multiPart("name", name)
                .multiPart("number", "P-77")
                .multiPart("expires", last.toString())
                .multiPart("remindDays", "30")
                .multiPart("file", "paper.pdf", file)
                .post(shop.at("shop/papers"))
                .then();
    }

    private UUID customer(AShop.Shop shop) {
        return shops.in(
                shop,
                () -> customers
                        .add(Customer.Facts.of("Mara Quill", "fr", "555-0142", "mara@example.com"))
                        .id());
    }

    @Test
    void a_ticket_is_kept_with_whose_it_is_and_sent() {
        var shop = shops.open("CA-ON", "en");
        UUID customer = customer(shop);
        byte[] ticket = "%PDF-1.7 gas".getBytes(StandardCharsets.US_ASCII);
        Map<String, Object> asked = new HashMap<>(Map.of(
                "kind",
                "ticket",
                "name",
                "Gas, first class",
                "pdf",
                Base64.getEncoder().encodeToString(ticket)));
        send(shop.office(), shop.api("papers"), asked).statusCode(422);
        asked.put("person", UUID.randomUUID().toString());
        send(shop.office(), shop.api("papers"), asked).statusCode(422);
        asked.put("person", shop.technician().toString());
        String id = send(shop.office(), shop.api("papers"), asked)
                .statusCode(201)
                .extract()
                .path("id");
        String name =
                shops.in(shop, () -> people.of(shop.technician()).orElseThrow().name());
        as(shop.office())
                .get(shop.at("shop/papers"))
                .then()
                .body(containsString("ticket, " + name), containsString("Gas, first class"));
        post(shop.office(), shop.at("shop/papers/" + id + "/sending"), Map.of("known", customer.toString()))
                .statusCode(303);
        assertEquals(1, shops.in(shop, () -> outbox.to(customer)).size());
    }

    @Test
    void a_paper_is_told_of_in_time_and_sent_while_it_holds() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-ON", language);
            LocalDate day = shops.in(shop, () -> today.day());
            UUID customer = customer(shop);
            bring(shop, "Liability", day.plusDays(20), "words".getBytes(StandardCharsets.US_ASCII))
                    .statusCode(422)
                    .body(containsString(french ? "Choisissez un fichier PDF" : "Choose a PDF file"));
            bring(shop, "Liability", day.plusDays(20), PDF).statusCode(303);
            bring(shop, "Far away", day.plusDays(31), PDF).statusCode(303);
            bring(shop, "Last year", day.minusDays(1), PDF).statusCode(303);
            as(shop.office())
                    .get(shop.at("today"))
                    .then()
                    .statusCode(200)
                    .body(containsString("Liability"))
                    .body(containsString("Last year"))
                    .body(not(containsString("Far away")));
            List<String> ids =
                    as(shop.office()).get(shop.api("papers")).then().extract().path("id");
            String over = shop.at("shop/papers/" + ids.get(0));
            String holds = shop.at("shop/papers/" + ids.get(1));
            as(shop.office())
                    .get(shop.at("shop/papers"))
                    .then()
                    .body(containsString(french ? "ne vaut plus" : "holds no more"))
                    .body(containsString(french ? "expire bientôt" : "runs out soon"));
            post(shop.office(), over + "/sending", Map.of("known", customer.toString()))
                    .statusCode(422);
            post(shop.office(), holds + "/sending", Map.of()).statusCode(422);
            as(shop.office()).get(holds + "?who=Quill").then().body(containsString("Mara Quill"));
            post(shop.office(), holds + "/sending", Map.of("known", customer.toString()))
                    .statusCode(303);
            List<OutboxMessage> written = shops.in(shop, () -> outbox.to(customer));
            assertEquals(1, written.size());
            assertTrue(
                    written.getFirst().body().contains("Liability, qui vaut jusqu’au"),
                    written.getFirst().body());
            assertEquals(
                    PDF.length,
                    as(shop.office()).get(holds + "/file.pdf").then().extract().asByteArray().length);
            post(shop.office(), over + "/end", Map.of()).statusCode(303);
            as(shop.office()).get(shop.at("today")).then().body(not(containsString("Last year")));
            as(shop.technician()).get(shop.at("shop/papers")).then().statusCode(404);
        }
    }

    @Test
    void the_api_keeps_sends_and_puts_away_a_paper() {
        var shop = shops.open("CA-ON", "en");
        UUID customer = customer(shop);
        var facts = new HashMap<String, Object>(Map.of("kind", "licence", "name", "Gas licence"));
        String bare = send(shop.office(), shop.api("papers"), facts)
                .statusCode(201)
                .body("file", equalTo(false))
                .extract()
                .path("id");
        send(shop.office(), shop.api("papers/" + bare + "/sending"), Map.of("customer", customer.toString()))
                .statusCode(422);
        facts.put("pdf", "not base64!");
        send(shop.office(), shop.api("papers"), facts).statusCode(422);
        facts.put("pdf", Base64.getEncoder().encodeToString(PDF));
        String whole = send(shop.office(), shop.api("papers"), facts)
                .statusCode(201)
                .body("remindDays", equalTo(60))
                .extract()
                .path("id");
        send(shop.office(), shop.api("papers/" + whole + "/sending"), Map.of("customer", customer.toString()))
                .statusCode(200);
        send(shop.office(), shop.api("papers/" + bare + "/end"), Map.of()).statusCode(200);
        as(shop.office()).get(shop.api("papers/" + bare)).then().statusCode(404);
    }
}
