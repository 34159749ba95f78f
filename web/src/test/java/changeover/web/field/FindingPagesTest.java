package changeover.web.field;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A call has no checklist; what the technician finds there is written down all the same. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class FindingPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    static String location(ValidatableResponse response) {
        return response.statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]*", "")
                .replaceFirst("\\?.*", "");
    }

    /** A call's visit that nobody has yet. */
    static String made(Shop shop, UUID home) {
        return location(post(
                shop.office(),
                shop.at("homes/" + home + "/visits"),
                Map.of(
                        "kind", "call",
                        "first", TODAY.toString(),
                        "last", TODAY.toString(),
                        "minutes", "60",
                        "note", "No heat")));
    }

    /** A call's visit that the technician has today. */
    static String visit(Shop shop, UUID home) {
        String visit = made(shop, home);
        String seen = as(shop.office())
                .get(visit)
                .then()
                .extract()
                .asString()
                .replaceAll("(?s).*name=\"seen\" value=\"([^\"]*)\".*", "$1");
        location(post(
                shop.office(),
                visit + "/appointment",
                Map.of(
                        "technician",
                        shop.technician().toString(),
                        "day",
                        TODAY.toString(),
                        "starts",
                        "09:00",
                        "seen",
                        seen)));
        return visit.replace("/visits/", "/field/visits/");
    }

    private static Map<String, Object> found(String level, String text) {
        return new HashMap<>(Map.of(
                "made",
                UUID.randomUUID().toString(),
                "level",
                level,
                "text",
                text,
                "language",
                "en",
                "toldTo",
                "Anselm Birk",
                "answer",
                "yes",
                "next",
                "estimate"));
    }

    @Test
    void what_is_found_at_a_call_is_kept_taken_back_and_estimated() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            String visit =
                    visit(shop, homes.machines(shop, french ? "fr" : "en").home());
            String page = visit + "/findings";
            as(shop.technician())
                    .get(visit + "/closure")
                    .then()
                    .body(containsString(page), containsString(french ? "Noter ce qui a été constaté" : "Write down"));
            as(shop.technician()).get(page).then().statusCode(200);
            Map<String, Object> wrong = found("nothing", "The motor does not turn");
            post(shop.technician(), page, wrong).statusCode(422).body(containsString("The motor does not turn"));
            location(post(shop.technician(), page, found("recommended", "A noisy bearing")));
            String kept = as(shop.technician())
                    .get(page)
                    .then()
                    .body(containsString("A noisy bearing"))
                    .extract()
                    .asString()
                    .replaceAll("(?s).*name=\"back\" value=\"([0-9a-f-]{36})\".*", "$1");
            Map<String, Object> instead = found("urgent", "The motor does not turn");
            instead.put("back", kept);
            location(post(shop.technician(), page, instead));
            as(shop.technician())
                    .get(page)
                    .then()
                    .body(containsString("The motor does not turn"), not(containsString("A noisy bearing")));
            location(post(
                    shop.technician(),
                    visit + "/closure",
                    Map.of("made", UUID.randomUUID().toString(), "minutes", "60", "by", "Anselm Birk")));
            as(shop.technician()).get(page).then().body(containsString("The motor does not turn"));
            as(shop.owner())
                    .get(shop.at("today"))
                    .then()
                    .body(containsString(french ? "Une estimation est à écrire." : "One estimate is to be written."));
            as(shop.owner()).get(shop.at("estimates")).then().body(containsString("The motor does not turn"));
        }
    }

    @Test
    void what_must_not_be_used_leads_to_what_has_to_be_done() {
        Shop shop = shops.open("CA-ON", "en");
        String visit = visit(shop, homes.machines(shop, "en").home());
        String there = location(post(shop.technician(), visit + "/findings", found("do_not_use", "Soot at the door")));
        assertTrue(there.startsWith(visit + "/stopped/"), there);
        as(shop.technician()).get(there).then().statusCode(200).body(containsString("Soot at the door"));
    }
}
