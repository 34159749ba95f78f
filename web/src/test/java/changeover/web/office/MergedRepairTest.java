package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.estimates.EstimateChecks;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.web.AShop.Shop;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Whoever rang in the morning and was typed as new is a customer already: the repair that is under way comes along, and goes back. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MergedRepairTest extends AReviewedShop {

    /** As the checks ask it: what belongs together is of one home, or of two that were made one. */
    private static final String APART = """
            select (select count(*) from part_order o join visit v on v.id = o.visit_id where %1$s)
                 + (select count(*) from return_visit r join visit v on v.id = r.visit_id join visit o on o.id = v.answers_id where %1$s)
                 + (select count(*) from part_second_visit s join part_order o on o.id = s.order_id join visit v on v.id = s.visit_id
                     where %1$s)
            """.formatted("""
                    v.home_id <> o.home_id and not exists (select from home_merge m
                      where m.home_id in (v.home_id, o.home_id) and m.other_id in (v.home_id, o.home_id))
                    """);

    @Inject
    Parts parts;

    @Inject
    EntityManager rows;

    @Inject
    AgroalDataSource database;

    private record Rang(String call, UUID home) {}

    private static Rang rang(Shop shop) {
        String call = send(
                        shop.office(),
                        shop.api("calls"),
                        Map.of(
                                "caller", "Mara Quill",
                                "phone", "555-0142",
                                "trouble", "no_heat",
                                "heat", "no",
                                "words", "The furnace clicks and stops",
                                "street", "14 Larch St",
                                "city", "Port Ambrose"))
                .statusCode(201)
                .extract()
                .path("id");
        List<String> found = as(shop.office())
                .get(shop.api("homes?q=larch"))
                .then()
                .extract()
                .path("findAll { it.toBeRead }.id");
        return new Rang(call, UUID.fromString(found.getFirst()));
    }

    @Test
    void a_repair_under_way_comes_along_and_goes_back() {
        Shop shop = shops.open("CA-ON", "en");
        UUID home = priced(shop, "en").home();
        shops.in(shop, () -> parts.keep(new KnownPart("IND-7", new Wording("Motor", "Moteur"), "C62", null, null)));
        Rang rang = rang(shop);
        String callVisit = id(
                send(
                        shop.office(),
                        shop.api("calls/" + rang.call() + "/outcome"),
                        Map.of("how", "visit", "why", "Somebody has to look")),
                "outcome.visit");
        String kept = OrderPagesTest.visit(shop, rang.home());
        close(shop, kept, List.of());
        String planned = order(shop, kept);
        String second = id(send(shop.office(), shop.api("part-orders/" + planned + "/visit"), Map.of()), "secondVisit");
        String order = order(shop, kept);
        String waiting = order(shop, kept);
        String free = id(send(shop.office(), shop.api("visits/" + kept + "/returns"), again()), "visit");
        String estimate = estimate(shop, rang.home(), "call", rang.call());
        send(shop.office(), shop.api("estimates/" + estimate + "/offer"), Map.of())
                .statusCode(200);
        send(
                        shop.office(),
                        shop.api("estimates/" + estimate + "/answer"),
                        Map.of("how", "accepted", "by", "Mara Quill", "channel", "call"))
                .statusCode(200);
        String work = send(
                        shop.office(),
                        shop.api("estimates/" + estimate + "/visits"),
                        Map.of("last", TODAY.plusDays(3).toString()))
                .statusCode(201)
                .extract()
                .path("visits[0]");
        List<String> visits = List.of(callVisit, second, free, work);
        holds(shop);

        String merge = id(
                send(
                        shop.office(),
                        shop.api("merges"),
                        Map.of("home", home.toString(), "other", rang.home().toString())),
                "id");
        holds(shop);
        visits.forEach(visit -> at(shop, home, "visit", visit));
        at(shop, home, "call", rang.call());
        at(shop, home, "estimate", estimate);
        at(shop, home, "part_order", order);
        at(shop, rang.home(), "visit", kept);
        as(shop.office()).get(shop.at("homes/" + home)).then().statusCode(200).body(containsString("Mara Quill"));
        String later = id(send(shop.office(), shop.api("part-orders/" + order + "/visit"), Map.of()), "secondVisit");
        at(shop, home, "visit", later);
        String freeToo = id(send(shop.office(), shop.api("visits/" + kept + "/returns"), again()), "visit");
        at(shop, home, "visit", freeToo);
        String orderToo = order(shop, kept);
        at(shop, home, "part_order", orderToo);
        String estimateToo = estimate(shop, home, "visit", kept);
        at(shop, home, "estimate", estimateToo);
        holds(shop);

        send(shop.office(), shop.api("merges/" + merge + "/undoing"), Map.of()).statusCode(200);
        holds(shop);
        visits.forEach(visit -> at(shop, rang.home(), "visit", visit));
        at(shop, rang.home(), "call", rang.call());
        for (String one : List.of(estimate, estimateToo)) {
            at(shop, rang.home(), "estimate", one);
        }
        for (String one : List.of(order, planned, waiting, orderToo)) {
            at(shop, rang.home(), "part_order", one);
        }
        for (String one : List.of(later, freeToo)) {
            at(shop, rang.home(), "visit", one);
        }
    }

    private static Map<String, Object> again() {
        return Map.of("cause", "workmanship", "words", "It clicks again");
    }

    private static String order(Shop shop, String visit) {
        return id(
                send(
                        shop.office(),
                        shop.api("part-orders"),
                        Map.of(
                                "visit", visit,
                                "part", "IND-7",
                                "quantity", "1",
                                "supplier", "Tannery Supply",
                                "expectedOn", TODAY.plusDays(2).toString())),
                "id");
    }

    private static String estimate(Shop shop, UUID home, String from, String id) {
        return id(
                send(
                        shop.office(),
                        shop.api("estimates"),
                        Map.of(
                                "home",
                                home.toString(),
                                from,
                                id,
                                "words",
                                "A new motor",
                                "validUntil",
                                TODAY.plusDays(20).toString(),
                                "others",
                                List.of(Map.of(
                                        "words", "Sealing", "quantity", "1", "unit", "C62", "unitPrice", "50.25")))),
                "id");
    }

    private static String id(io.restassured.response.ValidatableResponse answer, String path) {
        return answer.extract().path(path).toString();
    }

    private void at(Shop shop, UUID home, String table, String id) {
        assertEquals(
                home.toString(),
                shops.in(
                        shop,
                        () -> rows.createNativeQuery(
                                        "select cast(home_id as text) from " + table + " where id = cast(:id as uuid)")
                                .setParameter("id", id)
                                .getSingleResult()),
                table);
    }

    private void holds(Shop shop) {
        assertEquals(
                0, shops.in(shop, () -> ((Number) rows.createNativeQuery(APART).getSingleResult()).intValue()));
        assertEquals(0, shops.in(shop, () -> {
            try (var connection = database.getConnection()) {
                return EstimateChecks.of(connection).bad();
            }
        }));
    }
}
