package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.hamcrest.Matchers.lessThan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A filter slot's own rhythm: told, drawn, said in a sentence, decided otherwise and given back. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RhythmPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));
    private static final String SOURCE = "A person’s word, not a measure";

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Test
    void what_was_told_is_drawn_and_said_and_the_list_follows_until_a_person_decides() {
        for (String language : new String[] {"en", "fr"}) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            var lived = homes.sold(shop, language);
            String path = shop.at("homes/" + lived.home() + "/machines/" + lived.filter() + "/rhythm");
            page(shop, path)
                    .body(containsString(french ? "Rien d’observé ici encore" : "Nothing seen here yet"))
                    .body(containsString(french ? "ce qui a été vendu" : "what was sold"));
            tell(shop, path, 130, "", true);
            tell(shop, path, 67, "grey", true);
            tell(shop, path, 4, "grey", true);
            String learned = page(shop, path)
                    .body(containsString(
                            french
                                    ? "Gris au premier regard à 9\u00a0semaines, 2 fois"
                                    : "Grey at the first look at 9\u00a0weeks, 2 times"))
                    .body(containsString(french ? "ce qui a été appris ici" : "what was learned here"))
                    .body(containsString("<svg class=\"draw filter-curve\""))
                    .body(not(containsString("style=")))
                    .extract()
                    .asString();
            Shown.keep("rhythm-" + language, learned);
            Matcher said = Pattern.compile((french ? "Gris au premier regard" : "Grey at the first look") + "[^<]*\\.")
                    .matcher(learned);
            assertTrue(said.find());
            as(shop.office())
                    .get(shop.at("homes/" + lived.home()))
                    .then()
                    .body(containsString(said.group()))
                    .body(containsString(french ? "érifier" : "check at"));
            post(shop.office(), path + "/word", Map.of("look", "5", "change", "6", "why", "Two dogs & a cat"))
                    .statusCode(303);
            page(shop, path)
                    .body(containsString("Two dogs &amp; a cat"))
                    .body(containsString(french ? "6\u00a0semaines" : "6\u00a0weeks"));
            as(shop.office())
                    .get(shop.at("homes/" + lived.home()))
                    .then()
                    .body(containsString(french ? "Remplacer le filtre" : "Change the filter"));
            post(shop.office(), path + "/word/ending", Map.of()).statusCode(303);
            page(shop, path).body(containsString(french ? "ce qui a été appris ici" : "what was learned here"));
            as(shop.owner())
                    .get(shop.at("changes/machines/" + lived.filter()))
                    .then()
                    .statusCode(200);
        }
    }

    @Test
    void a_word_told_by_mistake_is_taken_back_and_what_is_wrong_is_said_at_its_field() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.sold(shop, "en");
        String path = shop.at("homes/" + lived.home() + "/machines/" + lived.filter() + "/rhythm");
        tell(shop, path, 20, "clean", false);
        Matcher look = Pattern.compile("rhythm/looks/([0-9a-f-]{36})/withdrawal")
                .matcher(page(shop, path).extract().asString());
        assertTrue(look.find());
        post(shop.office(), path + "/looks/" + look.group(1) + "/withdrawal", Map.of())
                .statusCode(303);
        page(shop, path).body(containsString("Nothing was told"));
        post(
                        shop.office(),
                        path + "/looks",
                        Map.of(
                                "found",
                                "",
                                "by",
                                "Adèle",
                                "day",
                                TODAY.plusDays(1).toString()))
                .statusCode(422)
                .body(containsString("not come yet"));
        post(shop.office(), path + "/looks", Map.of("found", "", "by", "Adèle", "day", TODAY.toString()))
                .statusCode(422)
                .body(containsString("found-wrong"));
        post(shop.office(), path + "/word", Map.of("look", "9", "change", "6", "why", "x"))
                .statusCode(422)
                .body(containsString("change-wrong"))
                .body(containsString("value=\"9\""));
        post(shop.office(), path + "/word/ending", Map.of()).statusCode(404);
        as(shop.office())
                .get(shop.at("homes/" + lived.home() + "/machines/" + UUID.randomUUID() + "/rhythm"))
                .then()
                .statusCode(404);
    }

    @Test
    void the_household_says_with_its_tick_how_the_filter_looked() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.sold(shop, "en");
        String card = shop.at("homes/" + lived.home());
        Matcher task = Pattern.compile("(?s)name=\"task\".*?<option value=\"([0-9a-f-]{36})\">[^<]*deep filter")
                .matcher(as(shop.office()).get(card).then().extract().asString());
        assertTrue(task.find());
        post(
                        shop.office(),
                        card + "/household",
                        Map.of(
                                "task",
                                task.group(1),
                                "by",
                                "Adèle",
                                "day",
                                TODAY.toString(),
                                "found",
                                "grey",
                                "changed",
                                "yes"))
                .statusCode(303);
        page(shop, card + "/machines/" + lived.filter() + "/rhythm").body(containsString("grey, changed"));
    }

    @Test
    void the_business_says_how_seldom_a_filter_may_run_dirty_and_the_api_answers_with_it() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.sold(shop, "en");
        String api = shop.api("homes/" + lived.home() + "/rhythms");
        String machine = api + "/" + lived.filter();
        for (int days : new int[] {120, 60}) {
            send(
                            shop.office(),
                            machine + "/looks",
                            Map.of(
                                    "by",
                                    "Adèle",
                                    "found",
                                    "grey",
                                    "changed",
                                    true,
                                    "day",
                                    TODAY.minusDays(days).toString()))
                    .statusCode(200);
        }
        send(shop.office(), machine + "/looks", Map.of("by", "Adèle", "found", "grey", "changed", true))
                .statusCode(200)
                .body("follows", equalTo("learned"))
                .body("acceptedChance", equalTo(0.15f));
        int usual = look(shop, api);
        post(shop.office(), shop.at("shop/intervals/chance"), Map.of("percent", "60"))
                .statusCode(422)
                .body(containsString("percent-wrong"));
        post(shop.office(), shop.at("shop/intervals/chance"), Map.of("percent", "2"))
                .statusCode(303);
        as(shop.office()).get(api).then().body("[0].recommended.lookAfterDays", lessThan(usual));
        send(
                        shop.office(),
                        machine + "/word",
                        Map.of("lookAfterDays", 35, "changeAfterDays", 42, "why", SOURCE, "by", "Odile"))
                .statusCode(200)
                .body("follows", equalTo("word"))
                .body("word.why", equalTo(SOURCE));
        send(shop.office(), machine + "/word", Map.of("end", true))
                .statusCode(200)
                .body("follows", equalTo("learned"));
        send(shop.office(), machine + "/looks", Map.of("by", "Adèle")).statusCode(422);
        assertEquals(
                404,
                send(shop.office(), api + "/" + UUID.randomUUID() + "/looks", Map.of("by", "A", "changed", true))
                        .extract()
                        .statusCode());
    }

    private static int look(AShop.Shop shop, String api) {
        return as(shop.office()).get(api).then().statusCode(200).extract().path("[0].recommended.lookAfterDays");
    }

    private static ValidatableResponse page(AShop.Shop shop, String path) {
        return as(shop.office()).get(path).then().statusCode(200);
    }

    private static void tell(AShop.Shop shop, String path, int daysAgo, String found, boolean changed) {
        Map<String, String> form = new HashMap<>(Map.of(
                "found", found, "by", "Adèle", "day", TODAY.minusDays(daysAgo).toString()));
        if (changed) {
            form.put("changed", "yes");
        }
        post(shop.office(), path + "/looks", form).statusCode(303);
    }
}
