package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.SettableClock;
import changeover.contracts.tenants.Today;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AlikeHomesPagesTest {

    private static final List<String> MOVING = List.of(
            "home",
            "equipment",
            "hazard",
            "access_code",
            "agreement",
            "visit",
            "household_task",
            "unkept_promise",
            "unit_history",
            "follow_up",
            "home_shut",
            "home_handover",
            "machine_stop",
            "last_time_unread",
            "home_part",
            "closure",
            "invoice");

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    EntityManager rows;

    @Inject
    SettableClock clock;

    @Inject
    Today today;

    @AfterEach
    void theRealDay() {
        clock.reset();
    }

    @Test
    void two_that_look_like_one_are_merged_with_all_their_records_and_undone_to_the_last_row() {
        for (String language : List.of("en", "fr")) {
            var shop = shops.open("CA-QC", language);
            UUID other = homes.sold(shop, language).home();
            UUID home = homes.machines(shop, language).home();
            shutAndStopped(shop, other);
            String page = as(shop.office())
                    .get(shop.at("homes/alike"))
                    .then()
                    .statusCode(200)
                    .body(containsString("14 Larch Street"))
                    .extract()
                    .asString();
            Shown.keep("alike-" + language, page);
            Map<String, String> before = sums(shop);
            long machines = count(shop, "equipment", home) + count(shop, "equipment", other);

            merge(shop, home, other);
            assertEquals(0, count(shop, "agreement", other));
            assertEquals(machines, count(shop, "equipment", home));
            for (String still : List.of("home_shut", "home_handover", "machine_stop", "last_time_unread")) {
                assertEquals(1, count(shop, still, home), still);
            }
            assertTrue(
                    count(shop, "visit where agreement_id is not null and true", home) > 0,
                    "visits to come came along");
            assertEquals(
                    0,
                    number(
                            shop,
                            "select count(*) from visit v join agreement a on a.id = v.agreement_id where v.home_id <> a.home_id"
                                    + " and not exists (select from visit_ending e where e.visit_id = v.id)"));
            as(shop.office())
                    .get(shop.at("homes/" + other))
                    .then()
                    .statusCode(200)
                    .body(containsString(
                            language.equals("fr") ? "Cette maison est passée dans" : "This home went into"));
            as(shop.office())
                    .get(shop.at("homes/" + home))
                    .then()
                    .statusCode(200)
                    .body(containsString(language.equals("fr") ? "Fusionnée avec" : "Merged with"));
            as(shop.office()).get(shop.at("homes")).then().body(not(containsString("homes/" + other)));
            post(shop.office(), shop.at("homes/alike"), two(home, other, "first"))
                    .statusCode(422);

            undo(shop).statusCode(303);
            assertEquals(before, sums(shop));
            merge(shop, home, other);
            clock.setDay(shops.in(shop, () -> today.day()).plusDays(2));
            undo(shop).statusCode(422);
            assertNotEquals(before, sums(shop));
            clock.reset();
        }
    }

    @Test
    void two_that_are_two_are_offered_no_more_and_nobody_reaches_another_business() {
        var shop = shops.open("CA-ON", "en");
        UUID one = homes.machines(shop, "en").home();
        UUID other = UUID.fromString(String.valueOf(shops.in(
                shop,
                () -> rows.createNativeQuery(
                                "insert into home (key, street, city, region, postal, country) values ('x', '14, larch st', 'PORT AMBROSE',"
                                        + " 'ON', null, 'CA') returning cast(id as text)")
                        .getSingleResult())));
        as(shop.office()).get(shop.at("homes/alike")).then().body(containsString("same street and number"));
        var stranger = shops.open("CA-ON", "en");
        UUID theirs = homes.machines(stranger, "en").home();
        post(shop.office(), shop.at("homes/alike"), two(one, theirs, "first")).statusCode(422);
        post(shop.technician(), shop.at("homes/alike"), two(one, other, "first"))
                .statusCode(404);
        post(shop.office(), shop.at("homes/alike"), two(one, other, "apart")).statusCode(303);
        as(shop.office()).get(shop.at("homes/alike")).then().body(containsString("No two homes look like one."));
        post(shop.office(), shop.at("homes/alike/merges/" + UUID.randomUUID() + "/undoing"), Map.of())
                .statusCode(404);
    }

    @Test
    void two_are_merged_undone_and_kept_apart_over_the_api() {
        var shop = shops.open("CA-ON", "en");
        String other = homes.sold(shop, "en").home().toString();
        String home = homes.machines(shop, "en").home().toString();
        as(shop.office()).get(shop.api("homes/alike")).then().statusCode(200).body("[0].common", hasItem("street"));
        String merge = send(shop.office(), shop.api("merges"), Map.of("home", home, "other", other))
                .statusCode(200)
                .body("other", equalTo(other))
                .extract()
                .path("id");
        as(shop.office()).get(shop.api("merges")).then().body("[0].id", equalTo(merge));
        send(shop.office(), shop.api("merges"), Map.of("home", home, "other", other))
                .statusCode(422);
        send(shop.office(), shop.api("merges/" + merge + "/undoing"), Map.of()).statusCode(200);
        send(shop.office(), shop.api("merges/" + merge + "/undoing"), Map.of()).statusCode(404);
        as(shop.office()).get(shop.api("merges")).then().body("size()", equalTo(0));
        send(shop.office(), shop.api("homes/alike/apart"), Map.of("home", home, "other", home))
                .statusCode(422)
                .body("refusals.code", hasItem("merge.one-and-the-same"));
        send(shop.office(), shop.api("homes/alike/apart"), Map.of("home", home, "other", other))
                .statusCode(200);
        as(shop.office()).get(shop.api("homes/alike")).then().body("size()", equalTo(0));
    }

    /** What still holds of a home that is merged into another. */
    private void shutAndStopped(AShop.Shop shop, UUID home) {
        shops.in(shop, () -> {
            for (String sql : List.of(
                    "insert into home_shut (home_id, from_day, heat_off, water_drained) values (:home, '2099-01-10', true, true)",
                    "insert into home_handover (home_id, kind, customer_id, day)"
                            + " select :home, 'let', id, '2099-07-01' from customer limit 1",
                    "insert into machine_stop (home_id, person_id, at, day, seen, language, ticket, place)"
                            + " values (:home, '" + shop.technician()
                            + "', now(), '2026-03-02', 'Soot over the door', 'en', 'gas', 'CA-QC')",
                    "insert into last_time_unread (home_id, equipment_id, task_code)"
                            + " select home_id, id, 'coil-dust' from equipment where home_id = :home limit 1")) {
                rows.createNativeQuery(sql).setParameter("home", home).executeUpdate();
            }
            return null;
        });
    }

    private void merge(AShop.Shop shop, UUID home, UUID other) {
        post(shop.office(), shop.at("homes/alike"), two(home, other, "first")).statusCode(303);
    }

    private static Map<String, String> two(UUID one, UUID other, String what) {
        return Map.of("one", one.toString(), "other", other.toString(), "what", what);
    }

    private io.restassured.response.ValidatableResponse undo(AShop.Shop shop) {
        String page =
                as(shop.office()).get(shop.at("homes/alike")).then().extract().asString();
        var form = Pattern.compile("homes/alike/merges/[0-9a-f-]{36}/undoing").matcher(page);
        String path = form.find()
                ? form.group()
                : "homes/alike/merges/"
                        + shops.in(
                                shop,
                                () -> rows.createNativeQuery(
                                                "select cast(id as text) from home_merge order by made_at desc limit 1")
                                        .getSingleResult())
                        + "/undoing";
        return post(shop.office(), shop.at(path), Map.of());
    }

    private Map<String, String> sums(AShop.Shop shop) {
        Map<String, String> sums = new TreeMap<>();
        for (String table : MOVING) {
            sums.put(
                    table,
                    String.valueOf(shops.in(
                            shop,
                            () -> rows.createNativeQuery(
                                            "select md5(coalesce(string_agg(cast(t as text), '' order by t.id), '')) from "
                                                    + table + " t")
                                    .getSingleResult())));
        }
        return sums;
    }

    private long count(AShop.Shop shop, String table, UUID home) {
        String from = table.contains(" where ") ? table + " and" : table + " where";
        return number(shop, "select count(*) from " + from + " home_id = '" + home + "'");
    }

    private long number(AShop.Shop shop, String sql) {
        return shops.in(shop, () -> ((Number) rows.createNativeQuery(sql).getSingleResult()).longValue());
    }
}
