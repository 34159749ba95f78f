package changeover.web.session;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Nobody becomes a member of a second business without their own yes. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AskedToJoinTest {

    @Inject
    AShop shops;

    @Inject
    SignInsInMemory signIns;

    @Inject
    People people;

    @Inject
    Today today;

    private AShop.Shop asking(AShop.Shop theirs, String language) {
        var shop = shops.open(language.equals("fr") ? "CA-QC" : "CA-ON", language);
        String email = theirs.slug() + "-t@example.com";
        signIns.know(email, theirs.technician());
        post(
                        shop.owner(),
                        shop.at("shop/people"),
                        Map.of("name", "Mika Tarn", "email", email, "role", "technician", "language", language))
                .statusCode(200)
                .body(containsString(language.equals("fr") ? "tant qu’elle n’a pas dit oui" : "until they say yes"));
        return shop;
    }

    @Test
    void no_door_opens_before_their_own_yes() {
        var theirs = shops.open("CA-ON", "en");
        var shop = asking(theirs, "en");
        as(theirs.technician()).get(shop.at("field")).then().statusCode(404);
        as(theirs.technician()).get(shop.api("parts")).then().statusCode(404);
        as(shop.owner()).get(shop.at("shop")).then().body(containsString("waiting for their yes"));
        assertTrue(shops.in(shop, () -> people.technicians(today.day())).stream()
                .noneMatch(one -> one.personId().equals(theirs.technician())));

        as(theirs.technician())
                .redirects()
                .follow(false)
                .get("/")
                .then()
                .statusCode(200)
                .body(containsString("Yes, I work at Atelier " + shop.slug()));
        post(theirs.technician(), "/", Map.of("business", shop.slug(), "answer", "yes"))
                .statusCode(303)
                .header("Location", containsString("/" + shop.slug() + "/field"));

        as(theirs.technician()).get(shop.at("field")).then().statusCode(200);
        as(shop.owner()).get(shop.at("shop")).then().body(not(containsString("waiting for their yes")));
        Membership member = shops.in(shop, () -> people.of(theirs.technician()).orElseThrow());
        assertEquals(shops.in(shop, today::day), member.joinedOn().orElseThrow());
        post(theirs.technician(), "/", Map.of("business", shop.slug(), "answer", "yes"))
                .statusCode(404);
    }

    @Test
    void the_question_is_put_in_french_too_and_only_to_who_was_asked() {
        var theirs = shops.open("CA-QC", "fr");
        var shop = asking(theirs, "fr");
        as(shop.owner()).get(shop.at("shop")).then().body(containsString("en attente de son oui"));
        as(theirs.technician())
                .header("Accept-Language", "fr-CA")
                .get("/")
                .then()
                .statusCode(200)
                .body(containsString("Oui, je travaille chez Atelier " + shop.slug()));
        post(theirs.office(), "/", Map.of("business", shop.slug(), "answer", "yes"))
                .statusCode(404);
        post(theirs.technician(), "/", Map.of("business", "no-such-shop", "answer", "yes"))
                .statusCode(404);
    }

    @Test
    void the_same_question_is_asked_by_the_api_and_no_day_is_given_before_the_answer() {
        var theirs = shops.open("CA-ON", "en");
        var shop = shops.open("CA-ON", "en");
        String email = theirs.slug() + "-t@example.com";
        signIns.know(email, theirs.technician());
        send(
                        shop.owner(),
                        shop.api("people"),
                        Map.of("name", "Mika Tarn", "email", email, "role", "technician", "language", "en"))
                .statusCode(201)
                .body("waiting", equalTo(true))
                .body("id", equalTo(theirs.technician().toString()));
        post(shop.owner(), shop.at("shop/people/" + theirs.technician() + "/password"), Map.of())
                .statusCode(422);
    }

    @Test
    void a_no_is_seen_with_its_day_and_the_owner_may_ask_again() {
        var theirs = shops.open("CA-ON", "en");
        var shop = asking(theirs, "en");
        post(theirs.technician(), "/", Map.of("business", shop.slug(), "answer", "perhaps"))
                .statusCode(404);
        post(theirs.technician(), "/", Map.of("business", shop.slug(), "answer", "no"))
                .statusCode(303);
        as(theirs.technician()).get(shop.at("field")).then().statusCode(404);
        as(theirs.technician()).redirects().follow(false).get("/").then().statusCode(303);
        as(shop.owner()).get(shop.at("shop")).then().body(containsString("said no on"));
        String email = theirs.slug() + "-t@example.com";
        var again = Map.of("name", "Mika Tarn", "email", email, "role", "office", "language", "en");
        send(shop.owner(), shop.api("people"), again)
                .statusCode(201)
                .body("waiting", equalTo(true))
                .body("role", equalTo("office"));
        post(theirs.technician(), "/", Map.of("business", shop.slug(), "answer", "yes"))
                .header("Location", containsString("/" + shop.slug() + "/today"));
        send(shop.owner(), shop.api("people"), again)
                .statusCode(422)
                .body("refusal", containsString("already belongs"));
    }
}
