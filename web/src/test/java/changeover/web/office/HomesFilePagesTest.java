package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.Homes;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HomesFilePagesTest {

    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    @Inject
    AShop shops;

    @Inject
    ALivedInHome lived;

    @Inject
    Homes homes;

    @Test
    void a_file_is_looked_at_first_then_brought_in_and_taken_out_the_same() {
        var from = shops.open("CA-ON", "en");
        lived.machines(from, "en");
        byte[] file = as(from.office())
                .get(from.at("homes/file/homes.csv"))
                .then()
                .statusCode(200)
                .extract()
                .asByteArray();
        var shop = shops.open("CA-ON", "en");
        as(shop.office()).get(shop.at("homes/file")).then().statusCode(200);
        String page = send(shop.office(), shop.at("homes/file"), file, "look")
                .statusCode(200)
                .body(containsString("Every row is good."))
                .extract()
                .asString();
        Shown.keep("file-look-en", page);
        assertEquals(0L, shops.in(shop, () -> homes.count()));
        send(shop.office(), shop.at("homes/file"), file, "all").statusCode(200).body(containsString("Written"));
        assertEquals(1L, shops.in(shop, () -> homes.count()));
        byte[] again = as(shop.office())
                .get(shop.at("homes/file/homes.csv"))
                .then()
                .extract()
                .asByteArray();
        assertEquals(new String(file, StandardCharsets.UTF_8), new String(again, StandardCharsets.UTF_8));
    }

    @Test
    void bad_rows_are_listed_and_come_back_while_good_ones_go_in() {
        var from = shops.open("CA-ON", "fr");
        lived.machines(from, "fr");
        String good = new String(
                as(from.office())
                        .get(from.at("homes/file/homes.csv"))
                        .then()
                        .extract()
                        .asByteArray(),
                StandardCharsets.UTF_8);
        byte[] file = good.replace("filter-slot", "<b>no-kind</b>").getBytes(StandardCharsets.UTF_8);
        var shop = shops.open("CA-ON", "fr");
        String path = shop.at("homes/file");
        String page = send(shop.office(), path, file, "look")
                .statusCode(200)
                .body(containsString("Rien n’est encore écrit"))
                .body(not(containsString("<b>no-kind")))
                .extract()
                .asString();
        Shown.keep("file-bad-fr", page);
        send(shop.office(), path, file, "all").statusCode(200).body(containsString("Rien n’a été écrit"));
        assertEquals(0L, shops.in(shop, () -> homes.count()));
        String back = send(shop.office(), path, file, "good")
                .statusCode(200)
                .body(containsString("&lt;b&gt;no-kind"))
                .extract()
                .asString();
        Shown.keep("file-back-fr", back);
        assertEquals(1L, shops.in(shop, () -> homes.count()));
    }

    @Test
    void what_is_no_file_of_homes_is_refused_in_a_sentence() {
        var shop = shops.open("CA-ON", "en");
        String path = shop.at("homes/file");
        send(shop.office(), path, new byte[0], "look").statusCode(422).body(containsString("Choose a file first."));
        send(shop.office(), path, new byte[] {0, 1, 2, (byte) 0xff}, "all").statusCode(422);
        send(shop.office(), path, "a,b\n1,2\n".getBytes(StandardCharsets.UTF_8), "all")
                .statusCode(422);
    }

    @Test
    void codes_leave_only_with_the_owner_and_a_reason() {
        var shop = shops.open("CA-ON", "en");
        lived.machines(shop, "en");
        String path = shop.at("homes/file/homes.csv");
        as(shop.office()).get(path).then().body(not(containsString("2468")));
        post(shop.office(), path, Map.of("reason", "moving house")).statusCode(404);
        post(shop.owner(), path, Map.of("reason", "")).statusCode(422);
        post(shop.owner(), path, Map.of("reason", "for the safe"))
                .statusCode(200)
                .body(containsString("2468"));
    }

    @Test
    void a_file_without_the_form_s_token_is_not_taken() {
        var shop = shops.open("CA-ON", "en");
        as(shop.office())
                .multiPart("file", "homes.csv", new byte[] {1}, "text/csv")
                .multiPart("what", "look")
                .post(shop.at("homes/file"))
                .then()
                .statusCode(400);
    }

    private static ValidatableResponse send(UUID person, String path, byte[] file, String what) {
        return as(person)
                .cookie("csrf-token", TOKEN)
                .multiPart("csrf", TOKEN)
                .multiPart("what", what)
                .multiPart("file", "homes.csv", file, "text/csv")
                .post(path)
                .then();
    }
}
