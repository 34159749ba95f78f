package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.not;
import static org.hamcrest.CoreMatchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Today;
import changeover.scheduling.hours.HoursWorked;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.reviews.Spreads;
import changeover.web.APartner;
import changeover.web.AShop;
import changeover.web.field.PlannedVisit;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** A visit goes to a licensed partner: judged by their papers, on nobody's day, closed in their name. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PartnerPagesTest {

    private static final byte[] PDF = "%PDF-1.7 panel checked".getBytes(StandardCharsets.US_ASCII);
    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    @Inject
    AShop shops;

    @Inject
    GivenVisits given;

    @Inject
    HoursWorked hours;

    @Inject
    Spreads spreads;

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    private ValidatableResponse bring(AShop.Shop shop, String visit, byte[] file) {
        return as(shop.office())
                .redirects()
                .follow(false)
                .cookie("csrf-token", TOKEN)
                .multiPart("csrf", TOKEN)
                .multiPart("file", "report.pdf", file)
                .post(shop.at("visits/" + visit + "/partner/report"))
                .then();
    }

    private static Map<String, String> paper(String kind, LocalDate last) {
        return Map.of("kind", kind, "number", "L-1", "expires", last.toString(), "remindDays", "30");
    }

    @Test
    void a_visit_goes_to_a_partner_whose_papers_hold_and_is_closed_as_theirs() throws Exception {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = shops.in(shop, () -> today.day());
            String home = PlannedVisit.home(shop);
            String visit = PlannedVisit.visit(shop, home);
            String list = shop.at("shop/partners");
            post(shop.office(), list, Map.of("name", "", "trade", "electrical")).statusCode(422);
            post(shop.office(), list, Map.of("name", "Lindqvist Electric", "trade", "electrical", "phone", "555-0177"))
                    .statusCode(303);
            post(shop.office(), list, Map.of("name", "Lindqvist Electric", "trade", "electrical"))
                    .statusCode(422);
            String partner = as(shop.office())
                    .get(shop.api("partners"))
                    .then()
                    .statusCode(200)
                    .extract()
                    .path("[0].id");
            String page = shop.at("visits/" + visit + "/partner");
            var form = new HashMap<String, String>(
                    Map.of("partner", partner, "day", day.toString(), "price", french ? "180,00" : "180.00"));
            post(shop.office(), page, form)
                    .statusCode(422)
                    .body(containsString(french ? "Aucune licence de Lindqvist" : "No licence of Lindqvist"));
            String papers = list + "/" + partner + "/papers";
            post(shop.office(), papers, paper("licence", day.plusYears(1))).statusCode(303);
            post(shop.office(), papers, paper("insurance", day.minusDays(1))).statusCode(303);
            post(shop.office(), page, form)
                    .statusCode(422)
                    .body(containsString(french ? "L’assurance de Lindqvist" : "The insurance of Lindqvist"));
            as(shop.office())
                    .get(shop.at("today"))
                    .then()
                    .body(containsString(french ? "Papiers de partenaires" : "Papers of partners"));
            String over = as(shop.office())
                    .get(shop.api("partners/" + partner))
                    .then()
                    .extract()
                    .path("papers[0].id");
            post(shop.office(), papers + "/" + over + "/end", Map.of()).statusCode(303);
            as(shop.office())
                    .get(shop.at("today"))
                    .then()
                    .body(not(containsString(french ? "Papiers de partenaires" : "Papers of partners")));
            post(shop.office(), page, form).statusCode(303);
            as(shop.office())
                    .get(shop.at("visits/" + visit))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Chez Lindqvist Electric" : "With Lindqvist Electric"));
            as(shop.office()).get(shop.at("today")).then().body(containsString("Lindqvist Electric"));
            assertEquals(
                    0L,
                    shops.in(
                            shop,
                            () -> rows.createNativeQuery("select count(*) from appointment", Long.class)
                                    .getSingleResult()));
            bring(shop, visit, "words".getBytes(StandardCharsets.US_ASCII)).statusCode(422);
            bring(shop, visit, PDF).statusCode(303);
            assertEquals(
                    PDF.length,
                    as(shop.office())
                            .get(page + "/report")
                            .then()
                            .statusCode(200)
                            .extract()
                            .asByteArray()
                            .length);
            var close = new HashMap<String, String>(Map.of(
                    "made", UUID.randomUUID().toString(), "day", day.plusDays(1).toString(), "minutes", "55"));
            post(shop.office(), page + "/closure", close).statusCode(422);
            close.put("day", day.toString());
            post(shop.office(), page + "/closure", close).statusCode(422);
            close.put("receivedBy", "Anselm Birk");
            post(shop.office(), page + "/closure", close).statusCode(303);
            as(shop.office())
                    .get(shop.at("homes/" + home))
                    .then()
                    .statusCode(200)
                    .body(containsString("Lindqvist Electric"));
            byte[] report = as(shop.office())
                    .get(shop.api("visits/" + visit + "/report.pdf"))
                    .then()
                    .statusCode(200)
                    .extract()
                    .asByteArray();
            try (var read = Loader.loadPDF(report)) {
                String words = new PDFTextStripper().getText(read);
                assertTrue(words.contains("Lindqvist Electric"), words);
                assertTrue(words.contains(french ? "consigné par Basil Fenn" : "written down by Basil Fenn"), words);
            }
            shops.in(shop, () -> {
                assertTrue(given.of(UUID.fromString(visit)).orElseThrow().done());
                assertEquals(0, hours.of(shop.office(), day).minutes());
                assertEquals(List.of(), spreads.times(Window.ofDays(day, day)));
                return null;
            });
            post(shop.office(), page + "/return", Map.of("why", "Too late")).statusCode(422);
        }
    }

    @Test
    void a_visit_is_in_one_hand_and_comes_back() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = shops.in(shop, () -> today.day());
        String visit = PlannedVisit.visit(shop, PlannedVisit.home(shop));
        String partner = APartner.gas(shop, "Brandt Gas", day);
        as(shop.office()).get(shop.api("partners/" + partner)).then().body("papers[0].remindDays", equalTo(60));
        String with = shop.api("visits/" + visit + "/partner");
        as(shop.office()).get(with).then().statusCode(200).body("partner", nullValue());
        var deal = Map.of("partner", partner, "day", day.plusDays(2).toString(), "price", "220.00");
        send(shop.office(), with, deal)
                .statusCode(200)
                .body("name", equalTo("Brandt Gas"))
                .body("price.amount", equalTo("220.00"));
        send(shop.office(), with, deal).statusCode(422);
        send(
                        shop.office(),
                        shop.api("visits/" + visit + "/appointment"),
                        Map.of("technician", shop.technician().toString(), "day", day.toString(), "starts", "10:00"))
                .statusCode(422)
                .body("refusal", containsString("in other hands"));
        as(shop.office())
                .get(shop.api("visits?from=" + day.plusDays(2) + "&until=" + day.plusDays(2)))
                .then()
                .body("partner", hasItem("Brandt Gas"))
                .body("day", hasItem(day.plusDays(2).toString()));
        as(shop.technician()).get(with).then().statusCode(404);
        send(shop.office(), with + "/report", Map.of("file", Base64.getEncoder().encodeToString(PDF)))
                .statusCode(200)
                .body("report", equalTo(true));
        send(shop.office(), with + "/return", Map.of("why", "They are ill"))
                .statusCode(200)
                .body("partner", nullValue());
        send(
                        shop.office(),
                        shop.api("visits/" + visit + "/appointment"),
                        Map.of("technician", shop.technician().toString(), "day", day.toString(), "starts", "10:00"))
                .statusCode(200);
        send(shop.office(), with, deal).statusCode(200);
        List<String> tasks = as(shop.office())
                .get(shop.api("visits/" + visit))
                .then()
                .extract()
                .path("tasks.id");
        var close = new HashMap<String, Object>(Map.of(
                "day", day.toString(), "notDone", List.of(tasks.getFirst()), "nobodyWhy", "The key was in the box"));
        send(shop.office(), with + "/closure", close).statusCode(422);
        close.put("notDoneWhy", "No part");
        send(shop.office(), with + "/closure", close).statusCode(200).body("made", equalTo(true));
        as(shop.office())
                .get(shop.api("visits/" + visit))
                .then()
                .body("visit.how", equalTo("closed"))
                .body("visit.partner", equalTo("Brandt Gas"));
        send(shop.office(), shop.api("partners/" + partner + "/end"), Map.of()).statusCode(200);
        as(shop.office()).get(shop.api("partners")).then().body("size()", equalTo(0));
    }
}
