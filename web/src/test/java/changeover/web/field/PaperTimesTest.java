package changeover.web.field;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Today;
import changeover.scheduling.closeout.Closure;
import changeover.scheduling.closeout.Closures;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A sheet of paper is typed on a later day: the visit keeps its own day and the hours that the paper says. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PaperTimesTest {

    private static final ZoneId ZONE = ZoneId.of("America/Toronto");

    @Inject
    AShop shops;

    @Inject
    Closures closures;

    @Inject
    Today today;

    private String yesterdays(AShop.Shop shop, LocalDate yesterday) {
        String visit = PlannedVisit.visit(shop, PlannedVisit.home(shop));
        send(
                        shop.office(),
                        shop.api("visits/" + visit + "/appointment"),
                        Map.of(
                                "technician",
                                shop.technician().toString(),
                                "day",
                                yesterday.toString(),
                                "starts",
                                "08:30"))
                .statusCode(200);
        return visit;
    }

    private void isKept(AShop.Shop shop, String visit, LocalDate day) {
        Closure closure =
                shops.in(shop, () -> closures.of(UUID.fromString(visit)).orElseThrow());
        assertEquals(day, closure.day());
        assertEquals(
                day.atTime(LocalTime.of(8, 40)).atZone(ZONE).toInstant(),
                closure.arrivedAt().orElseThrow());
        assertEquals(
                day.atTime(LocalTime.of(9, 55)).atZone(ZONE).toInstant(),
                closure.leftAt().orElseThrow());
        assertEquals(75, closure.minutes());
    }

    @Test
    void a_close_out_typed_from_paper_keeps_the_papers_day_and_hours() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate yesterday = shops.in(shop, () -> today.day()).minusDays(1);
            String visit = yesterdays(shop, yesterday);
            String page = shop.at("field/visits/" + visit + "/closure");
            as(shop.office()).get(page).then().statusCode(200).body(containsString("name=\"arrived\""));
            as(shop.technician()).get(page).then().statusCode(200).body(not(containsString("name=\"arrived\"")));
            var form = new HashMap<String, String>(Map.of(
                    "made", UUID.randomUUID().toString(), "rest", "yes", "by", "Anselm Birk", "arrived", "08:40"));
            post(shop.office(), page, form)
                    .statusCode(422)
                    .body(containsString(french ? "ou ni l’une ni l’autre" : "or neither"));
            form.put("left", "08:20");
            post(shop.office(), page, form).statusCode(422);
            form.put("left", "09:55");
            post(shop.office(), page, form).statusCode(303);
            isKept(shop, visit, yesterday);
            as(shop.office()).get(shop.at("visits/" + visit)).then().body(containsString("Basil Fenn"));
        }
    }

    @Test
    void the_papers_hours_count_though_whoever_types_pressed_that_they_are_here() {
        var shop = shops.open("CA-QC", "en");
        LocalDate yesterday = shops.in(shop, () -> today.day()).minusDays(1);
        String visit = yesterdays(shop, yesterday);
        String page = shop.at("field/visits/" + visit);
        post(shop.office(), page + "/arrival", Map.of("made", UUID.randomUUID().toString()))
                .statusCode(303);
        post(
                        shop.office(),
                        page + "/closure",
                        Map.of(
                                "made",
                                UUID.randomUUID().toString(),
                                "rest",
                                "yes",
                                "by",
                                "Anselm Birk",
                                "arrived",
                                "08:40",
                                "left",
                                "09:55"))
                .statusCode(303);
        isKept(shop, visit, yesterday);
    }

    @Test
    void the_api_takes_the_papers_hours_too() {
        var shop = shops.open("CA-QC", "en");
        LocalDate yesterday = shops.in(shop, () -> today.day()).minusDays(1);
        String visit = yesterdays(shop, yesterday);
        var body = new HashMap<String, Object>(Map.of(
                "others",
                "done",
                "receivedBy",
                "Anselm Birk",
                "arrivedAt",
                yesterday.atTime(8, 40).atZone(ZONE).toOffsetDateTime().toString(),
                "leftAt",
                yesterday
                        .plusDays(3)
                        .atTime(9, 55)
                        .atZone(ZONE)
                        .toOffsetDateTime()
                        .toString()));
        send(shop.office(), shop.api("visits/" + visit + "/closure"), body).statusCode(422);
        body.put(
                "leftAt",
                yesterday.atTime(8, 20).atZone(ZONE).toOffsetDateTime().toString());
        send(shop.office(), shop.api("visits/" + visit + "/closure"), body)
                .statusCode(422)
                .body("refusals.code", hasItem("closeout.paper-left-before"));
        body.remove("leftAt");
        send(shop.office(), shop.api("visits/" + visit + "/closure"), body)
                .statusCode(422)
                .body("refusals.code", hasItem("closeout.paper-both-times"));
        body.put(
                "leftAt",
                yesterday.atTime(9, 55).atZone(ZONE).toOffsetDateTime().toString());
        send(shop.office(), shop.api("visits/" + visit + "/closure"), body).statusCode(200);
        isKept(shop, visit, yesterday);
    }
}
