package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.notices.Outbox;
import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Nobody here holds the ticket: a licensed partner puts the machine back, and somebody here writes it down. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class StopByPartnerTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    Outbox outbox;

    @Inject
    EntityManager rows;

    private static String partner(Shop shop, String name, String trade, LocalDate licensedUntil) {
        String id = send(shop.owner(), shop.api("partners"), Map.of("name", name, "trade", trade))
                .statusCode(201)
                .extract()
                .path("id");
        send(
                        shop.owner(),
                        shop.api("partners/" + id + "/papers"),
                        Map.of("kind", "licence", "number", "G-81", "expires", licensedUntil.toString()))
                .statusCode(200);
        return id;
    }

    private String stop(Shop shop, UUID home) {
        return send(shop.office(), shop.api("homes/" + home + "/stopped"), Map.of("seen", "Soot", "ticket", "gas"))
                .statusCode(201)
                .extract()
                .path("id");
    }

    @Test
    void a_partners_licence_puts_it_back_and_says_who_wrote_it_down() {
        for (boolean french : java.util.List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            UUID home = homes.machines(shop, french ? "fr" : "en").home();
            String stop = stop(shop, home);
            String page = shop.at("stopped/" + stop);
            as(shop.office())
                    .get(page)
                    .then()
                    .body(containsString(
                            french ? "Aucun de nos partenaires n’a de licence" : "No partner of ours has a licence"));
            String electric = partner(shop, "Lindqvist Electric", "electrical", TODAY.plusYears(1));
            String lapsed = partner(shop, "Brandt Gas", "gas", TODAY.minusDays(1));
            String gas = partner(shop, "Park Gas", "gas", TODAY.plusYears(1));
            as(shop.office())
                    .get(page)
                    .then()
                    .body(
                            containsString("Park Gas"),
                            containsString("G-81"),
                            not(containsString("Lindqvist Electric")));
            var typed = new HashMap<String, Object>(Map.of(
                    "partner",
                    lapsed,
                    "partnerHow",
                    "in_service",
                    "partnerDay",
                    TODAY.toString(),
                    "partnerDone",
                    "Burner cleaned"));
            post(shop.office(), page + "/partner", typed)
                    .statusCode(422)
                    .body(containsString("id=\"partner-wrong\""), containsString("Burner cleaned"));
            typed.put("partner", electric);
            post(shop.office(), page + "/partner", typed).statusCode(422).body(containsString("id=\"partner-wrong\""));
            typed.put("partner", gas);
            typed.put("partnerDay", TODAY.plusDays(1).toString());
            post(shop.office(), page + "/partner", typed)
                    .statusCode(422)
                    .body(containsString("id=\"partnerDay-wrong\""));
            typed.put("partnerDay", TODAY.toString());
            typed.put("partnerDone", " ");
            post(shop.office(), page + "/partner", typed)
                    .statusCode(422)
                    .body(containsString("id=\"partnerDone-wrong\""));
            typed.put("partnerDone", "Burner cleaned");
            post(shop.technician(), page + "/partner", typed).statusCode(404);
            OrderPagesTest.location(post(shop.office(), page + "/partner", typed));
            as(shop.office())
                    .get(page)
                    .then()
                    .body(
                            containsString(french ? "Remis en service par Park Gas" : "Put back by Park Gas"),
                            containsString("G-81"),
                            containsString(french ? "noté par" : "written down by"));
            as(shop.office())
                    .get(shop.api("stopped/" + stop))
                    .then()
                    .body(
                            "back.partner",
                            equalTo("Park Gas"),
                            "back.ticket",
                            equalTo("gas"),
                            "back.number",
                            equalTo("G-81"));
            assertTrue(shops.in(shop, () -> outbox.about(UUID.fromString(stop))).stream()
                    .anyMatch(one -> one.body().contains("Park Gas")));
            assertEquals(
                    0,
                    shops.in(
                            shop,
                            () -> ((Number) rows.createNativeQuery(
                                                    "select count(*) from back_in_service where partner_id is null or paper_id is null")
                                            .getSingleResult())
                                    .intValue()));
        }
    }

    @Test
    void a_program_says_it_too_and_nobody_writes_past_the_licence() {
        Shop shop = shops.open("CA-ON", "en");
        UUID home = homes.machines(shop, "en").home();
        String lapsed = partner(shop, "Brandt Gas", "gas", TODAY.minusDays(1));
        String gas = partner(shop, "Park Gas", "gas", TODAY.plusYears(1));
        String stop = stop(shop, home);
        String at = shop.api("stopped/" + stop + "/partner");
        Map<String, Object> facts =
                new HashMap<>(Map.of("how", "in_service", "done", "Burner cleaned", "partner", lapsed));
        send(shop.office(), at, facts).statusCode(422).body("refusals.code", hasItem("stopped.partner-licence"));
        Shop other = shops.open("CA-ON", "en");
        facts.put("partner", partner(other, "Their Gas", "gas", TODAY.plusYears(1)));
        send(shop.office(), at, facts).statusCode(422).body("refusals.code", hasItem("partner.unknown"));
        facts.put("partner", gas);
        facts.put("day", TODAY.minusDays(1).toString());
        send(shop.office(), at, facts).statusCode(422).body("refusals.code", hasItem("stopped.end-day"));
        send(shop.technician(), at, facts).statusCode(404);
        assertThrows(
                RuntimeException.class,
                () -> shops.in(
                        shop,
                        () -> rows.createNativeQuery("""
                                insert into back_in_service (stop_id, how, person_id, ticket_kind, day, at, done, partner_id,
                                  paper_id)
                                select s.id, 'in_service', s.person_id, 'gas', s.day, now(), 'Past it', q.partner_id, q.id
                                  from machine_stop s, partner_paper q where q.partner_id = cast(:lapsed as uuid)""")
                                .setParameter("lapsed", lapsed)
                                .executeUpdate()));
        facts.remove("day");
        send(shop.office(), at, facts)
                .statusCode(200)
                .body("back.partner", equalTo("Park Gas"), "back.day", equalTo(TODAY.toString()));
        send(shop.office(), at, facts).statusCode(422);
    }
}
