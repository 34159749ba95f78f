package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A bank's file is looked at, kept once, matched with a reason, and booked only after a yes; reminders go by the list. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BankPagesTest {

    static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    ABilledShop billed;

    static ValidatableResponse bring(AShop.Shop shop, String path, String file, Map<String, String> fields) {
        var request = as(shop.office())
                .redirects()
                .follow(false)
                .cookie("csrf-token", "AAAAAAAAAAAAAAAAAAAAAA")
                .multiPart("csrf", "AAAAAAAAAAAAAAAAAAAAAA")
                .multiPart("file", "lines.csv", file.getBytes(StandardCharsets.UTF_8), "text/csv");
        fields.forEach(request::multiPart);
        return request.post(path).then();
    }

    @Test
    void three_rows_first_then_kept_once_then_a_yes() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String number = as(shop.owner())
                    .get(shop.api("invoices"))
                    .then()
                    .extract()
                    .path("find { it.number != null }.number");
            String path = post(shop.office(), shop.at("money/bank/banks"), Map.of("name", "Harbour Bank"))
                    .statusCode(303)
                    .extract()
                    .header("Location")
                    .replaceFirst("^https?://[^/]+", "");
            as(shop.office()).get(path).then().statusCode(200);
            String file =
                    "Date;Quoi;Sortie;Entrée\n" + DAY + ";Virement " + number + ";;1 000,00\n" + DAY + ";Frais;4,00;\n";
            String seen = bring(shop, path, file, Map.of("what", "look"))
                    .statusCode(200)
                    .body(containsString(french ? "première lecture" : "first reading"))
                    .body(containsString(french ? "1\u00a0000,00" : "1,000.00"))
                    .extract()
                    .asString();
            as(shop.office()).get(shop.at("money/bank")).then().body(not(containsString("Virement " + number)));
            assertEquals(
                    true,
                    seen.contains("value=\"2026") || seen.contains("name=\"dayColumn\" type=\"text\" value=\"1\""));
            Map<String, String> columns = new HashMap<>(Map.of(
                    "what",
                    "keep",
                    "separator",
                    "semicolon",
                    "headRows",
                    "1",
                    "dayColumn",
                    "1",
                    "dayStyle",
                    "year-month-day",
                    "amountColumn",
                    "4",
                    "outColumn",
                    "3",
                    "decimalComma",
                    "yes",
                    "wordsColumns",
                    "2"));
            Map<String, String> wrong = new HashMap<>(columns);
            wrong.put("dayColumn", "2");
            bring(shop, path, file, wrong).statusCode(422).body(containsString(french ? "La rangée 2" : "Row 2"));
            bring(shop, path, file, columns).statusCode(303).header("Location", containsString("bank-taken"));
            bring(shop, path, file, columns).statusCode(303).header("Location", containsString("bank-known"));
            as(shop.office())
                    .get(shop.at("money/bank"))
                    .then()
                    .statusCode(200)
                    .body(containsString("Virement " + number))
                    .body(containsString(french ? "le numéro" : "the number"));
            List<Map<String, Object>> lines = as(shop.owner())
                    .get(shop.api("bank-lines"))
                    .then()
                    .extract()
                    .path("$");
            assertEquals(2, lines.size());
            String with = as(shop.owner())
                    .get(shop.api("bank-lines"))
                    .then()
                    .extract()
                    .path("find { it.proposal != null }.id");
            String without = as(shop.owner())
                    .get(shop.api("bank-lines"))
                    .then()
                    .extract()
                    .path("find { it.proposal == null }.id");
            String shown = as(shop.owner())
                    .get(shop.api("bank-lines/" + with))
                    .then()
                    .extract()
                    .path("proposal.shown");
            post(shop.office(), shop.at("money/bank/bookings"), Map.of()).statusCode(422);
            post(shop.office(), shop.at("money/bank/bookings"), Map.of("line", with, "shown-" + with, "otherwise"))
                    .statusCode(422);
            post(shop.office(), shop.at("money/bank/bookings"), Map.of("line", with, "shown-" + with, shown))
                    .statusCode(303);
            as(shop.office()).get(shop.at("money/bank/lines/" + without)).then().statusCode(200);
            post(shop.office(), shop.at("money/bank/lines/" + without + "/dismissal"), Map.of("why", ""))
                    .statusCode(422);
            post(shop.office(), shop.at("money/bank/lines/" + without + "/dismissal"), Map.of("why", "The bank's own"))
                    .statusCode(303);
            as(shop.owner()).get(shop.api("bank-lines")).then().body("size()", equalTo(0));
            post(shop.office(), shop.at("money/bank/lines/" + with + "/taking-back"), Map.of())
                    .statusCode(303);
            post(
                            shop.office(),
                            shop.at("money/bank/lines/" + with + "/split"),
                            Map.of("number-1", "nothing", "amount-1", ""))
                    .statusCode(422)
                    .body(containsString(french ? "Aucun document de ce numéro" : "No document with this number"));
            Map<String, String> twice = Map.of(
                    "number-1",
                    number,
                    "amount-1",
                    "10.00",
                    "number-2",
                    number.toLowerCase(Locale.ROOT),
                    "amount-2",
                    "7.00");
            post(shop.office(), shop.at("money/bank/lines/" + with + "/split"), twice)
                    .statusCode(422)
                    .body(containsString(french ? "se nomme une seule fois" : "is named once"))
                    .body(containsString("value=\"7.00\""));
            post(
                            shop.office(),
                            shop.at("money/bank/lines/" + with + "/split"),
                            Map.of("number-1", number, "amount-1", "10.00"))
                    .statusCode(303);
            as(shop.technician()).get(shop.at("money/bank")).then().statusCode(404);
        }
    }

    @Test
    void the_ladder_is_the_owners_and_a_hold_says_why() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String customer =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
            as(shop.office())
                    .get(shop.at("money/reminders"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "pas encore d’étape" : "no step yet"));
            post(shop.office(), shop.at("money/reminders/ladder/usual"), Map.of())
                    .statusCode(404);
            post(shop.owner(), shop.at("money/reminders/ladder/usual"), Map.of())
                    .statusCode(303);
            as(shop.owner())
                    .get(shop.at("money/reminders/ladder"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "après 21 jours" : "after 21 days"));
            as(shop.owner())
                    .get(shop.at("money/reminders/ladder/step?days=21"))
                    .then()
                    .statusCode(200)
                    .body(containsString("{documents}"));
            Map<String, String> step = new HashMap<>(Map.of(
                    "days",
                    "3",
                    "tone",
                    "firm",
                    "subjectEn",
                    "Late",
                    "subjectFr",
                    "En retard",
                    "bodyEn",
                    "Pay.",
                    "bodyFr",
                    "{documents}"));
            post(shop.owner(), shop.at("money/reminders/ladder/step"), step).statusCode(422);
            step.put("bodyEn", "{documents}");
            post(shop.owner(), shop.at("money/reminders/ladder/step"), step).statusCode(303);
            post(shop.owner(), shop.at("money/reminders/ladder/step/withdrawal"), Map.of("days", "3"))
                    .statusCode(303);
            post(shop.owner(), shop.at("money/reminders/ladder/step/withdrawal"), Map.of("days", "3"))
                    .statusCode(422);
            post(shop.owner(), shop.at("money/reminders/ladder"), Map.of("how", "daily"))
                    .statusCode(303);
            as(shop.office())
                    .get(shop.at("money/reminders"))
                    .then()
                    .body(containsString(french ? "d’eux-mêmes" : "by themselves"));
            post(shop.office(), shop.at("money/reminders"), Map.of()).statusCode(422);
            String holds = shop.at("money/customers/" + customer + "/holds");
            post(shop.office(), holds, Map.of("invoice", "", "kind", "dispute", "why", "", "until", ""))
                    .statusCode(422);
            post(shop.office(), holds, Map.of("invoice", "", "kind", "dispute", "why", "The pad was wet", "until", ""))
                    .statusCode(303);
            String page = as(shop.office())
                    .get(holds)
                    .then()
                    .statusCode(200)
                    .body(containsString("The pad was wet"))
                    .extract()
                    .asString();
            String hold = page.replaceAll("(?s).*/money/holds/([0-9a-f-]{36})/end.*", "$1");
            post(shop.office(), shop.at("money/holds/" + hold + "/end"), Map.of())
                    .statusCode(303);
            post(shop.office(), shop.at("money/holds/" + hold + "/end"), Map.of())
                    .statusCode(422);
            as(shop.owner()).get(shop.api("reminders")).then().statusCode(200).body("due.size()", equalTo(0));
            send(shop.owner(), shop.api("reminders"), Map.of()).statusCode(200);
            as(shop.technician()).get(shop.at("money/reminders")).then().statusCode(404);
        }
    }
}
