package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;
import static org.hamcrest.CoreMatchers.notNullValue;

import changeover.billing.notices.NewMessage;
import changeover.billing.notices.Outbox;
import changeover.billing.notices.Recipient;
import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MailApiTest {

    @Inject
    AShop shops;

    @Inject
    Outbox outbox;

    @Inject
    EntityManager rows;

    private String written(AShop.Shop shop, @Nullable String address) {
        UUID about = UUID.randomUUID();
        return shops.in(shop, () -> {
                    outbox.write(List.of(new NewMessage(
                            "offer",
                            about,
                            1,
                            null,
                            new Recipient(null, "Solange Vautrin", address, List.of("27, rue des Aulnes"), "fr"),
                            "Votre offre",
                            "Bonjour",
                            List.of())));
                    return outbox.about(about).getFirst().id();
                })
                .toString();
    }

    @Test
    void the_outbox_is_read_by_how_far_each_message_came() {
        var shop = shops.open("CA-ON", "en");
        String mail = written(shop, "solange@example.com");
        String letter = written(shop, null);
        as(shop.office())
                .get(shop.api("mail?state=waiting"))
                .then()
                .statusCode(200)
                .body("id", hasItems(mail, letter))
                .body("standing", hasItems("to_send", "to_print"));
        as(shop.office()).get(shop.api("mail?state=failed")).then().body("size()", equalTo(0));
        as(shop.office()).get(shop.api("mail/" + mail)).then().statusCode(200).body("body", equalTo("Bonjour"));
        Sending.twice(shop.office(), shop.api("mail/" + letter + "/printing"), Map.of())
                .statusCode(200)
                .body("state", equalTo("sent"))
                .body("printed", notNullValue());
        as(shop.office()).get(shop.api("mail?state=sent")).then().body("id", equalTo(List.of(letter)));
    }

    @Test
    void what_failed_is_tried_again() {
        var shop = shops.open("CA-ON", "en");
        String mail = written(shop, "solange@example.com");
        shops.in(
                shop,
                () -> rows.createNativeQuery("update outbox set last_error = '451 try later' where id = :id")
                        .setParameter("id", UUID.fromString(mail))
                        .executeUpdate());
        as(shop.office()).get(shop.api("mail?state=failed")).then().body("id", equalTo(List.of(mail)));
        as(shop.office())
                .get(shop.at("shop/mail"))
                .then()
                .statusCode(200)
                .body(containsString("451 try later"))
                .body(containsString("Try again now"));
        var other = shops.open("CA-ON", "en");
        AShop.post(other.office(), other.at("shop/mail/" + mail + "/attempt"), Map.of())
                .statusCode(404);
        Sending.twice(shop.office(), shop.api("mail/" + mail + "/attempt"), Map.of())
                .statusCode(200)
                .body("state", equalTo("waiting"));
    }

    @Test
    void what_is_wrong_is_said_in_the_readers_language() {
        var english = shops.open("CA-ON", "en");
        send(english.office(), english.api("mail/" + written(english, "s@example.com") + "/printing"), Map.of())
                .statusCode(422)
                .body("refusal", equalTo("This goes by mail. Only a letter is printed."));
        as(english.office()).get(english.api("mail?state=lost")).then().statusCode(422);
        var french = shops.open("CA-QC", "fr");
        send(french.office(), french.api("mail/" + written(french, "s@example.com") + "/attempt"), Map.of())
                .statusCode(422)
                .body("refusal", equalTo("Ceci n’a pas échoué\u00a0: il n’y a rien à reprendre."));
    }

    @Test
    void another_businesses_mail_is_not_found_and_a_technician_reads_none() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String theirs = written(other, null);
        as(shop.office()).get(shop.api("mail/" + theirs)).then().statusCode(404);
        send(shop.office(), shop.api("mail/" + theirs + "/printing"), Map.of("odd", 1))
                .statusCode(404);
        as(shop.technician()).get(shop.api("mail")).then().statusCode(404);
    }
}
