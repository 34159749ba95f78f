package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class JournalPagesTest {

    static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ABilledShop billed;

    @Test
    void what_each_account_moved_opens_its_postings_and_the_file_bears_the_codes() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-QC", french ? "fr" : "en");
            String days = "?from=" + DAY.minusDays(3) + "&until=" + DAY;
            as(shop.office())
                    .get(shop.at("money/journal" + days))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Comptes clients" : "Owed by customers"))
                    .body(containsString(french ? "pas encore de code" : "no code yet"));
            as(shop.office())
                    .get(shop.at("money/journal/postings" + days + "&role=receivable"))
                    .then()
                    .statusCode(200)
                    .body(containsString("money/invoices/"))
                    .body(containsString(french ? "439,57" : "439.57"));
            as(shop.office())
                    .get(shop.at("money/journal/postings" + days + "&role=nothing"))
                    .then()
                    .statusCode(404);
            post(shop.office(), shop.at("money/accounts"), Map.of("code-receivable", "1100", "code-deferred", " 2400 "))
                    .statusCode(303);
            as(shop.office())
                    .get(shop.at("money/accounts"))
                    .then()
                    .statusCode(200)
                    .body(containsString("2400"));
            post(shop.office(), shop.at("money/accounts"), Map.of("code-receivable", "9".repeat(41)))
                    .statusCode(422)
                    .body(containsString("9".repeat(41)));
            as(shop.office())
                    .get(shop.at("money/journal/journal.csv" + days))
                    .then()
                    .statusCode(200)
                    .body(containsString(",receivable,1100,439.57,,CAD,"))
                    .body(containsString(",deferred,2400,,389.00,CAD,"))
                    .body(containsString(",card,,100.00,,CAD,"));
            as(shop.office())
                    .get(shop.at("money/journal?from=2026-02-01&until=2026-01-01"))
                    .then()
                    .statusCode(422);
            as(shop.technician()).get(shop.at("money/journal")).then().statusCode(404);
        }
    }

    @Test
    void closed_days_refuse_with_a_sentence_and_only_the_owner_opens_them() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-QC", french ? "fr" : "en");
            post(
                            shop.office(),
                            shop.at("money/periods"),
                            Map.of("until", DAY.plusDays(2).toString()))
                    .statusCode(422)
                    .body(containsString(french ? "à venir" : "still to come"));
            post(shop.office(), shop.at("money/periods"), Map.of("until", DAY.toString()))
                    .statusCode(303);
            String page = as(shop.office())
                    .get(shop.at("money/periods"))
                    .then()
                    .statusCode(200)
                    .body(containsString("Basil Fenn"))
                    .body(not(containsString("/reopening")))
                    .extract()
                    .asString();
            String customer =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
            send(shop.owner(), shop.api("payments"), Map.of("customer", customer, "amount", "5.00", "way", "card"))
                    .statusCode(422)
                    .body(containsString(french ? "Les livres sont fermés" : "The books are closed"));
            page = as(shop.owner())
                    .get(shop.at("money/periods"))
                    .then()
                    .extract()
                    .asString();
            var reopening =
                    Pattern.compile("/money/periods/[0-9a-f-]{36}/reopening").matcher(page);
            reopening.find();
            String path = shop.at(reopening.group().substring(1));
            post(shop.office(), path, Map.of("why", "A late letter")).statusCode(404);
            post(shop.owner(), path, Map.of("why", "")).statusCode(422);
            post(shop.owner(), path, Map.of("why", "A late letter of the bank")).statusCode(303);
            post(shop.owner(), path, Map.of("why", "Once more")).statusCode(422);
            post(shop.owner(), shop.at("money/periods/" + UUID.randomUUID() + "/reopening"), Map.of("why", "Again"))
                    .statusCode(404);
            as(shop.owner()).get(shop.at("money/periods")).then().body(containsString("A late letter of the bank"));
            send(shop.owner(), shop.api("payments"), Map.of("customer", customer, "amount", "5.00", "way", "card"))
                    .statusCode(201);
        }
    }
}
