package changeover.web.api;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Drafts over the API: their lines on a named edition, and a discard that is done once. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DraftsApiTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    private String draft(AShop.Shop shop) {
        UUID customer = homes.sold(shop, "en").customer();
        String id = as(shop.owner())
                .get(shop.api("invoices?customer=" + customer))
                .then()
                .extract()
                .path("find { it.number == null }.id");
        return "invoices/" + id;
    }

    private static ValidatableResponse discard(
            AShop.Shop shop, String draft, String operation, String edition, Object why) {
        return as(shop.office())
                .header("Operation-Id", operation)
                .header("If-Match", edition)
                .contentType(ContentType.JSON)
                .body(why)
                .post(shop.api(draft + "/discard"))
                .then();
    }

    @Test
    void lines_are_written_on_a_named_edition() {
        var shop = shops.open("CA-ON", "en");
        String draft = draft(shop);
        String edition = Sending.etag(shop.office(), shop.api(draft));
        assertEquals("\"0\"", edition);
        var lines = Map.of(
                "lines",
                List.of(
                        Map.of("position", 1, "unitPrice", "300.00", "work", "installation", "form", "lump_sum"),
                        Map.of("words", "Drain", "quantity", "1.5", "unit", "HUR", "unitPrice", "40.00")));
        Sending.put(shop.office(), shop.api(draft + "/lines"), edition, lines)
                .statusCode(200)
                .body("total.amount", is("406.80"))
                .body("lines.byHand", is(List.of(true, true)))
                .body("lines[1].kind", is("other"))
                .body("lines.work", is(List.of("installation", "repair")))
                .body("lines.form", is(List.of("lump_sum", "separate")));
        Sending.put(shop.office(), shop.api(draft + "/lines"), edition, lines)
                .statusCode(422)
                .body("refusals[0].code", is("changed-meanwhile"));
        Sending.put(shop.office(), shop.api(draft + "/lines"), "\"1\"", Map.of("lines", List.of(Map.of("position", 2))))
                .statusCode(200)
                .body("total.amount", is("67.80"));
        Sending.put(
                        shop.office(),
                        shop.api(draft + "/lines"),
                        "\"2\"",
                        Map.of("lines", List.of(Map.of("position", 1, "work", "fee"), Map.of("words", "x"))))
                .statusCode(422)
                .body("refusals.field.toString()", containsString("lines[0].work"))
                .body("refusals.field.toString()", containsString("lines[1].quantity"));
        Sending.put(shop.office(), shop.api(draft + "/lines"), "\"2\"", Map.of())
                .statusCode(422);
        Sending.put(shop.office(), shop.api(draft + "/lines"), "\"2\"", Map.of("lines", List.of()))
                .statusCode(200)
                .body("total.amount", is("0.00"));
        AShop.send(shop.office(), shop.api(draft + "/issue"), Map.of())
                .statusCode(422)
                .body("refusals[0].code", is("invoice.no-lines"));
    }

    @Test
    void terms_stand_beside_the_lines_and_what_is_not_named_stays() {
        var shop = shops.open("CA-ON", "en");
        String draft = draft(shop);
        String from = as(shop.office()).get(shop.api(draft)).path("day");
        var line = Map.of("position", 1);
        Sending.put(
                        shop.office(),
                        shop.api(draft + "/lines"),
                        "\"0\"",
                        Map.of("lines", List.of(line), "dueDays", 400, "mayIssueFrom", "soon"))
                .statusCode(422)
                .body("refusals.field", is(List.of("mayIssueFrom", "dueDays")));
        Sending.put(
                        shop.office(),
                        shop.api(draft + "/lines"),
                        "\"0\"",
                        Map.of("lines", List.of(line), "dueDays", 45, "purchaseOrder", "PO 7"))
                .statusCode(200)
                .body("day", is(from))
                .body("due", is(LocalDate.parse(from).plusDays(45).toString()));
        Sending.put(
                        shop.office(),
                        shop.api(draft + "/lines"),
                        Sending.etag(shop.office(), shop.api(draft)),
                        Map.of("lines", List.of(line), "mayIssueFrom", "2020-01-01"))
                .statusCode(422)
                .body("refusals[0].field", is("mayIssueFrom"));
    }

    @Test
    void a_discard_is_done_once_and_for_good() {
        var shop = shops.open("CA-ON", "en");
        String draft = draft(shop);
        String operation = UUID.randomUUID().toString();
        discard(shop, draft, operation, "", Map.of("why", "Moves away"))
                .statusCode(422)
                .body("refusals[0].code", is("session.if-match"));
        for (int times = 0; times < 2; times++) {
            discard(shop, draft, operation, "\"0\"", Map.of("why", "Moves away"))
                    .statusCode(200)
                    .body("state", is("discarded"));
        }
        as(shop.office()).get(shop.api(draft)).then().statusCode(200).body("state", is("discarded"));
        AShop.send(shop.office(), shop.api(draft + "/issue"), Map.of())
                .statusCode(422)
                .body("refusals[0].code", is("invoice.discarded"));
        Sending.put(shop.office(), shop.api(draft + "/lines"), "\"0\"", Map.of("lines", List.of()))
                .statusCode(422)
                .body("refusals[0].code", is("invoice.discarded"));
        var other = shops.open("CA-ON", "en");
        discard(other, draft, UUID.randomUUID().toString(), "\"0\"", Map.of("why", "Not ours"))
                .statusCode(404);
        as(shop.technician()).get(shop.api(draft)).then().statusCode(404);
    }

    @Test
    void what_is_issued_is_credited_instead() {
        var shop = shops.open("CA-ON", "en");
        String draft = draft(shop);
        AShop.send(shop.office(), shop.api(draft + "/issue"), Map.of()).statusCode(200);
        discard(shop, draft, UUID.randomUUID().toString(), "\"0\"", Map.of("why", "Too late"))
                .statusCode(422)
                .body("refusals[0].code", is("invoice.already-issued"))
                .body("refusals[0].sentence", containsString("a credit note corrects it"));
    }

    @Test
    void a_line_and_a_document_have_a_most_and_days_are_of_our_age() {
        var shop = shops.open("CA-ON", "en");
        String draft = draft(shop);
        String lines = shop.api(draft + "/lines");
        var beyond = Map.of("words", "x", "quantity", "99999", "unit", "C62", "unitPrice", "99999999.99");
        Sending.put(shop.office(), lines, "\"0\"", Map.of("lines", List.of(Map.of("position", 1), beyond)))
                .statusCode(422)
                .body("refusals[0].code", is("invoice.line-too-much"))
                .body("refusals[0].field", is("lines[1].unitPrice"));
        var much = Map.of("position", 1, "quantity", "99999", "unitPrice", "99999999.99");
        Sending.put(shop.office(), lines, "\"0\"", Map.of("lines", List.of(much)))
                .statusCode(422)
                .body("refusals[0].field", is("lines[0].unitPrice"));
        var most = Map.of("words", "x", "quantity", "1", "unit", "C62", "unitPrice", "99999999.99");
        Sending.put(shop.office(), lines, "\"0\"", Map.of("lines", List.of(most, most)))
                .statusCode(422)
                .body("refusals[0].code", is("invoice.lines-too-much"));
        for (String day : List.of("1900-01-01", "9998-12-31")) {
            Sending.put(
                            shop.office(),
                            lines,
                            "\"0\"",
                            Map.of("lines", List.of(Map.of("position", 1)), "mayIssueFrom", day))
                    .statusCode(422)
                    .body("refusals[0].code", is("typed.age"))
                    .body("refusals[0].field", is("mayIssueFrom"));
        }
        Sending.put(shop.office(), lines, "\"0\"", Map.of("lines", List.of(most)))
                .statusCode(200)
                .body("total.amount", is("112999999.99"));
        as(shop.office()).get(shop.api(draft)).then().statusCode(200).body("total.amount", is("112999999.99"));
        AShop.send(shop.office(), shop.api(draft + "/issue"), Map.of())
                .statusCode(422)
                .body("refusals[0].code", is("invoice.too-much"));
    }
}
