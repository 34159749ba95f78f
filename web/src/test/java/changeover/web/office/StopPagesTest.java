package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.People;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import changeover.web.OnTheirPage;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A machine that must not be used stands on every page that leads to it until somebody with the ticket puts it back. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class StopPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    Outbox outbox;

    @Inject
    People people;

    private static Map<String, Object> typed(boolean french) {
        return new HashMap<>(Map.of(
                "made",
                UUID.randomUUID().toString(),
                "equipment",
                "",
                "seen",
                french ? "Suie au-dessus de la porte" : "Soot over the door",
                "shutOff",
                "",
                "ticket",
                "gas"));
    }

    private static String customers(Shop shop, UUID customer) {
        return OnTheirPage.read(OnTheirPage.secret(shop, customer), shop.at("yours"))
                .statusCode(200)
                .extract()
                .asString();
    }

    private List<OutboxMessage> mails(Shop shop, String stop) {
        UUID id = UUID.fromString(stop.substring(stop.lastIndexOf('/') + 1));
        return shops.in(shop, () -> outbox.about(id));
    }

    @Test
    void the_office_stops_it_and_only_the_ticket_puts_it_back() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            ALivedInHome.Lived lived = homes.machines(shop, french ? "fr" : "en");
            as(shop.office())
                    .get(shop.at("stopped"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Rien n’est arrêté" : "Nothing is stopped"));
            String visit = OrderPagesTest.visit(shop, lived.home());
            String form = shop.at("homes/" + lived.home() + "/stopped");
            as(shop.office()).get(form).then().statusCode(200);
            Map<String, Object> empty = typed(french);
            empty.put("seen", " ");
            empty.put("shutOff", "Switch");
            post(shop.office(), form, empty)
                    .statusCode(422)
                    .body(containsString("Switch"), containsString(french ? "Écrivez ce qui" : "Write what was seen"));
            String stop = OrderPagesTest.location(post(shop.office(), form, typed(french)));
            String seen = french ? "Suie au-dessus de la porte" : "Soot over the door";
            String not = french ? "Ne pas utiliser" : "Do not use";
            for (String page : List.of(stop, shop.at("stopped"), shop.at("today"), shop.at("homes/" + lived.home()))) {
                as(shop.owner()).get(page).then().statusCode(200).body(containsString(seen));
            }
            as(shop.office()).get(shop.at("season/" + TODAY)).then().body(containsString(not), containsString(seen));
            as(shop.technician()).get(shop.at("field")).then().body(containsString(seen));
            as(shop.technician())
                    .get(shop.at("field/visits/" + visit))
                    .then()
                    .body(containsString(seen), containsString("/stopped/"));
            assertTrue(customers(shop, lived.customer()).contains(seen));
            OutboxMessage mail = mails(shop, stop).getFirst();
            assertEquals("stopped", mail.kind());
            assertEquals(french ? "fr" : "en", mail.language());
            assertTrue(mail.body().contains(seen), mail.body());
            assertTrue(mail.body().contains(french ? "codes locaux" : "local codes"), mail.body());
            duties(shop, stop, french);
            heat(shop, stop, french);
            service(shop, stop, french);
            as(shop.owner()).get(shop.at("today")).then().body(not(containsString(seen)));
            assertTrue(!customers(shop, lived.customer()).contains(seen));
            assertEquals(2, mails(shop, stop).size());
        }
    }

    private void duties(Shop shop, String stop, boolean french) {
        as(shop.office())
                .get(stop)
                .then()
                .body(
                        containsString(french ? "Règl. de l’Ont. 212/01" : "O. Reg. 212/01"),
                        containsString(french ? "dans les 14 jours" : "within 14 days"),
                        containsString(french ? "pas lu à la source" : "not read at its source"));
        var done = new HashMap<String, Object>(
                Map.of("code", "distributor-told", "who", "", "day", TODAY.toString(), "words", "File 77"));
        post(shop.office(), stop + "/duties", done).statusCode(422).body(containsString("File 77"));
        done.put("who", "Basil Fenn");
        OrderPagesTest.location(post(shop.office(), stop + "/duties", done));
        post(shop.office(), stop + "/duties", done).statusCode(422);
        as(shop.office()).get(stop).then().body(containsString("File 77"), containsString("Basil Fenn"));
        done.put("code", "nonsense");
        post(shop.office(), stop + "/duties", done).statusCode(422);
    }

    private void heat(Shop shop, String stop, boolean french) {
        var answer = new HashMap<String, Object>(Map.of(
                "onlyHeat", "yes",
                "freezing", "yes",
                "tonight", "",
                "officeWho", "Basil Fenn",
                "officeAt", "",
                "customerWho", "",
                "customerAt", ""));
        post(shop.office(), stop + "/heat", answer).statusCode(422).body(containsString("value=\"Basil Fenn\""));
        answer.put("officeAt", "16:10");
        post(shop.office(), stop + "/heat", answer)
                .statusCode(422)
                .body(containsString(french ? "ce qui chauffe la maison cette nuit" : "what heats the home tonight"));
        answer.put("tonight", "Two electric heaters");
        answer.put("customerWho", "Anselm Birk");
        answer.put("customerAt", "16:20");
        OrderPagesTest.location(post(shop.office(), stop + "/heat", answer));
        as(shop.office())
                .get(stop)
                .then()
                .body(containsString("Two electric heaters"), containsString("16:20"), containsString("Anselm Birk"));
    }

    private void service(Shop shop, String stop, boolean french) {
        var end = new HashMap<String, Object>(Map.of("how", "in_service", "done", "A new exchanger"));
        post(shop.office(), stop + "/service", end)
                .statusCode(422)
                .body(containsString(
                        french ? "Seule une personne qui a un permis" : "Only somebody with a gas ticket"));
        shops.in(shop, () -> people.hold(shop.owner(), "gas", "G-1", TODAY.minusDays(1)));
        post(shop.owner(), stop + "/service", end).statusCode(422);
        shops.in(shop, () -> people.hold(shop.owner(), "gas", "G-2", TODAY));
        as(shop.office()).get(stop).then().body(containsString("Odile Roe"), not(containsString("/service\"")));
        end.put("done", "");
        post(shop.owner(), stop + "/service", end).statusCode(422);
        end.put("done", "A new exchanger");
        OrderPagesTest.location(post(shop.owner(), stop + "/service", end));
        as(shop.office())
                .get(stop)
                .then()
                .body(containsString(french ? "Remis en service" : "Back in service"), containsString("G-2"));
    }

    @Test
    void a_technician_without_the_ticket_stops_at_the_door_and_hands_over() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            UUID home = homes.machines(shop, french ? "fr" : "en").home();
            String visit = shop.at("field/visits/" + OrderPagesTest.visit(shop, home));
            as(shop.technician())
                    .get(visit + "/stopped")
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "aucun permis n’est requis" : "no ticket is needed"));
            Map<String, Object> typed = typed(french);
            typed.put("shutOff", "The breaker");
            String stop = OrderPagesTest.location(post(shop.technician(), visit + "/stopped", typed));
            as(shop.technician())
                    .get(stop)
                    .then()
                    .statusCode(200)
                    .body(
                            containsString("The breaker"),
                            containsString("Mika Tarn"),
                            not(containsString("/service\"")));
            post(shop.technician(), stop + "/service", Map.of("how", "in_service", "done", "Relit it"))
                    .statusCode(422)
                    .body(containsString(french ? "permis de gaz" : "gas ticket"));
            OrderPagesTest.location(post(
                    shop.technician(),
                    stop + "/duties",
                    Map.of("code", "tag", "who", "Mika Tarn", "day", TODAY.toString(), "words", "")));
            OrderPagesTest.location(
                    post(shop.technician(), stop + "/heat", Map.of("onlyHeat", "no", "freezing", "yes")));
            Shop other = shops.open("CA-ON", "en");
            UUID elsewhere = homes.machines(other, "en").home();
            String theirs = other.at("field/visits/" + OrderPagesTest.visit(other, elsewhere));
            as(other.technician())
                    .get(theirs + stop.substring(stop.lastIndexOf("/stopped/")))
                    .then()
                    .statusCode(404);
        }
    }
}
